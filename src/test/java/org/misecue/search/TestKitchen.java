package org.misecue.search;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.misecue.narration.Cue;
import org.misecue.narration.NarrationReader;

/** An invented narration, and what the tests do with it. */
final class TestKitchen {

    static final String SOURCE = "narration/main.txt";

    static final List<Set<String>> OTHER_NAMES = List.of(
            Set.of("icing sugar", "powdered sugar", "confectioners' sugar"),
            Set.of("double cream", "heavy cream", "heavy whipping cream"),
            Set.of("golden syrup", "corn syrup"));

    private TestKitchen() {}

    static List<Passage> passages() throws IOException {
        Path file = Files.createTempFile("narration", ".txt");
        try {
            Files.write(file, lines("narration.txt"));
            return passages(NarrationReader.read(file, SOURCE).cues());
        } finally {
            Files.delete(file);
        }
    }

    /** Every fourth cue begins a new step. */
    static List<Passage> passages(List<Cue> cues) {
        return cues.stream()
                .map(cue -> Passage.of(SOURCE, cue, cues.indexOf(cue) / 4))
                .toList();
    }

    static List<String> lines(String resource) throws IOException {
        try (InputStream in = Objects.requireNonNull(TestKitchen.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    /** The quote with its marks in brackets. */
    static String marked(Hit hit) {
        StringBuilder out = new StringBuilder(hit.quote());
        for (int i = hit.marks().size() - 1; i >= 0; i--) {
            out.insert(hit.marks().get(i).to(), ']').insert(hit.marks().get(i).from(), '[');
        }
        return out.toString();
    }
}
