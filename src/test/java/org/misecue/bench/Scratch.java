package org.misecue.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;

/** A text in a file for as long as it is read: the readers take files, so that they see what people give them. */
final class Scratch {

    private Scratch() {}

    static <T> T read(String name, String text, Function<Path, T> reader) {
        try {
            Path folder = Files.createTempDirectory("misecue-bench");
            Path file = Files.writeString(folder.resolve(name), text);
            try {
                return reader.apply(file);
            } finally {
                Files.delete(file);
                Files.delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(name + " cannot be written", e);
        }
    }
}
