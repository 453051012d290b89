package org.misecue.desk.begin;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Parts;

/** The invented episode that comes with the program. */
final class Sample {

    /** What it is made of. A program in one file cannot list what it holds. */
    static final List<String> FILES = List.of("episode.yaml", "recipe.md", "narration/main.vtt", "footage/take-1.mp4");

    /** What its folder is called. */
    static final String NAME = "sample-plum-cake";

    private Sample() {}

    /**
     * Copies it into an archive, whole or not at all.
     *
     * @return its folder
     * @throws Refusal if it cannot be written there
     */
    static Path copyInto(Path archive) {
        Path part = Parts.in(archive, "");
        try {
            for (String file : FILES) {
                Path target = part.resolve(file);
                Files.createDirectories(Objects.requireNonNull(target.getParent()));
                try (InputStream in = open(file)) {
                    Files.copy(in, target);
                }
            }
            return NewFolder.settle(part, archive, NAME);
        } catch (IOException e) {
            throw NewFolder.unwritable(archive);
        } finally {
            Parts.discard(part);
        }
    }

    static InputStream open(String file) {
        return Objects.requireNonNull(
                Sample.class.getResourceAsStream("/sample-project/" + file), "the program comes with its sample");
    }
}
