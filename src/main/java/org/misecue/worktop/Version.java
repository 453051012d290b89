package org.misecue.worktop;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/** Which misecue this is. */
public final class Version {

    private Version() {}

    /** "0.1.0". */
    public static String current() {
        try (InputStream in = Version.class.getResourceAsStream("version.txt")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), UTF_8).strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
