package org.misecue.worktop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.stream.Stream;
import org.misecue.episode.Episode;
import org.misecue.search.MomentIndex;

/** Names the files that an index is made of, and how new they are. While it stays the same, so does the index. */
final class Stamp {

    private Stamp() {}

    static String of(Episode episode, OwnPantry own) {
        StringBuilder stamp = new StringBuilder("misecue ")
                .append(Version.current())
                .append(", index ")
                .append(MomentIndex.FORMAT)
                .append('\n');
        Stream.of(
                        Stream.of(
                                episode.recipe(),
                                episode.folder().resolve("episode.yaml"),
                                episode.state().path("corrections.yaml")),
                        own.files().stream(),
                        episode.narration().stream(),
                        episode.footage().stream(),
                        episode.footage().stream().map(film -> KeptReading.file(episode, film)))
                .flatMap(files -> files)
                .filter(Files::exists)
                .forEach(file -> stamp.append(line(episode, file)));
        return stamp.toString();
    }

    private static String line(Episode episode, Path file) {
        try {
            BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
            return episode.name(file) + " " + attributes.size() + " " + attributes.lastModifiedTime() + "\n";
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
