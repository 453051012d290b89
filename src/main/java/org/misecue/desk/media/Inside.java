package org.misecue.desk.media;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.misecue.desk.door.Refusal;
import org.misecue.episode.Episode;

/** Files of an episode by their names. A name is only ever compared with those that are there, so none leads anywhere else. */
final class Inside {

    private Inside() {}

    /** @throws Refusal if there is no such film, or a link leads out of the episode */
    static Path film(Episode episode, String name) {
        return named(episode, episode.footage(), name, "There is no film of this name in footage/.");
    }

    /**
     * A file in a folder of {@code out/}.
     *
     * @throws Refusal if there is no such file, or a link leads out of the episode
     */
    static Path made(Episode episode, String folder, String name) {
        return named(episode, listed(episode.out().path(folder)), name, "There is no file of this name any more.");
    }

    private static List<Path> listed(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    private static Path named(Episode episode, List<Path> files, String name, String otherwise) {
        Path file = files.stream()
                .filter(one -> String.valueOf(one.getFileName()).equals(name))
                .findFirst()
                .orElseThrow(() -> new Refusal(404, otherwise));
        try {
            if (file.toRealPath().startsWith(episode.folder().toRealPath())) {
                return file;
            }
        } catch (IOException e) {
            throw new Refusal(404, otherwise);
        }
        throw new Refusal(403, "This is a link to a file outside the episode; copy the file itself into the folder.");
    }
}
