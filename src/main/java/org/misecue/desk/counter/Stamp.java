package org.misecue.desk.counter;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.UUID;
import java.util.stream.Stream;

/** A few signs that change when one of some files changes, appears or goes: by names, sizes and times, nothing is read. */
final class Stamp {

    private static final int DEPTH = 2;

    private final StringBuilder text = new StringBuilder();

    /** Adds a file, or the files of a folder; what is not there is no fault. */
    Stamp with(Path path) {
        if (Files.isDirectory(path)) {
            try (Stream<Path> files = Files.walk(path, DEPTH)) {
                files.filter(file -> !isHidden(file))
                        .filter(Files::isRegularFile)
                        .sorted()
                        .forEach(this::line);
            } catch (IOException | java.io.UncheckedIOException e) {
                text.append(path).append(" unreadable\n");
            }
        } else {
            line(path);
        }
        return this;
    }

    /** Half-written files start with a dot. */
    private static boolean isHidden(Path file) {
        return String.valueOf(file.getFileName()).startsWith(".");
    }

    private void line(Path file) {
        try {
            BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
            text.append(file)
                    .append(' ')
                    .append(is.size())
                    .append(' ')
                    .append(is.lastModifiedTime().toInstant());
        } catch (IOException e) {
            text.append(file).append(" -");
        }
        text.append('\n');
    }

    String signs() {
        return UUID.nameUUIDFromBytes(text.toString().getBytes(UTF_8))
                .toString()
                .substring(0, 13);
    }
}
