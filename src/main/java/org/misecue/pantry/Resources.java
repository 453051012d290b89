package org.misecue.pantry;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.function.BiFunction;

/** The data files that come with the program. */
final class Resources {

    private Resources() {}

    static <T> T read(String file, BiFunction<String, InputStream, T> reader) {
        try (InputStream in = Objects.requireNonNull(Pantry.class.getResourceAsStream(file), file)) {
            return reader.apply(file, in);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }
}
