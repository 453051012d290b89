package org.misecue.worktop;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.misecue.episode.Episode;
import org.misecue.episode.OutFolder;
import org.misecue.shown.ShownJson;
import org.misecue.shown.ShownText;

/** What a film was found to show, kept in {@code .misecue/shown/} for as long as the film is the same. */
final class KeptReading {

    private final OutFolder state;
    private final String file;
    private final String mark;

    /** @param name of the film relative to the episode */
    KeptReading(OutFolder state, Path film, String name) {
        this.state = state;
        this.file = file(name);
        this.mark = ShownJson.mark(film);
    }

    private static String file(String name) {
        return "shown/" + name.substring(name.lastIndexOf('/') + 1) + ".json";
    }

    /** Where what a film shows is kept, if it was read. */
    static Path file(Episode episode, Path film) {
        return episode.state().path(file(episode.name(film)));
    }

    /** Empty where the film was never read, or is another one now. */
    Optional<ShownText> read() {
        Path kept = state.path(file);
        if (!Files.isRegularFile(kept)) {
            return Optional.empty();
        }
        try {
            return ShownJson.read(new String(Files.readAllBytes(kept), UTF_8), mark);
        } catch (IOException e) {
            return Optional.empty(); // it can be made again
        }
    }

    void keep(ShownText text) {
        state.write(file, ShownJson.write(text, mark));
    }
}
