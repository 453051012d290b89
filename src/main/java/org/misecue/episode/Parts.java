package org.misecue.episode;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;

/** What is not whole yet: names beside the place where it will lie, that start with a dot, so that nobody counts them. */
public final class Parts {

    static final String MARK = ".part-";

    /** A client that is silent for half a minute is hung up on: after an hour nobody writes there any more. */
    private static final Duration LEFT_OVER = Duration.ofHours(1);

    private Parts() {}

    /** @param ending with its dot */
    public static Path in(Path folder, String ending) {
        return folder.resolve(MARK + ProcessHandle.current().pid() + "-" + UUID.randomUUID() + ending);
    }

    /** Takes away what a run left in a folder that was ended in the middle; what is being written changes all the time. */
    public static void sweep(Path folder) {
        Instant before = Instant.now().minus(LEFT_OVER);
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                if (String.valueOf(file.getFileName()).startsWith(MARK)
                        && Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS)
                                .toInstant()
                                .isBefore(before)) {
                    discard(file);
                }
            }
        } catch (IOException | UncheckedIOException e) {
            // what cannot be swept harms nobody
        }
    }

    /** A file, or a folder with all that is in it; nothing that a link leads to. */
    public static void discard(Path part) {
        try (Stream<Path> tree = Files.walk(part)) {
            List<Path> deepest = tree.sorted(Comparator.reverseOrder()).toList();
            for (Path file : deepest) {
                Files.deleteIfExists(file);
            }
        } catch (IOException | UncheckedIOException e) {
            // gone already, or it stays where nobody counts it
        }
    }
}
