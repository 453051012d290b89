package org.misecue.narration;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.misecue.notice.Note;

/** Every case of {@code formats.txt}: a file, the cues that it holds, the notes that it earns. */
class FormatTableTest {

    @TestFactory
    Stream<DynamicTest> each_case_is_read_as_written() throws IOException {
        try (InputStream in = Objects.requireNonNull(getClass().getResourceAsStream("formats.txt"))) {
            String all = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return Stream.of(all.substring("=== ".length()).split("\n=== "))
                    .map(one -> DynamicTest.dynamicTest(one.substring(0, one.indexOf('\n')), () -> check(one)));
        }
    }

    private static void check(String one) {
        String file = part(one, "\n", "\n--- cues\n");
        Narration narration = TestCues.read(file);
        assertThat(TestCues.lines(narration)).isEqualTo(lines(one, "--- cues"));
        assertThat(narration.notes()).extracting(Note::toString).isEqualTo(lines(one, "--- notes"));
        List<String> words = lines(one, "--- words of the first");
        if (!words.isEmpty()) {
            assertThat(TestCues.words(narration.cues().get(0))).isEqualTo(words.get(0));
        }
    }

    private static List<String> lines(String one, String heading) {
        return one.contains("\n" + heading + "\n")
                ? part(one, "\n" + heading + "\n", "\n---").strip().lines().toList()
                : List.of();
    }

    private static String part(String one, String from, String to) {
        String rest = one.substring(one.indexOf(from) + from.length());
        return rest.contains(to) ? rest.substring(0, rest.indexOf(to)) : rest;
    }
}
