package org.misecue.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.misecue.day.Psplib;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Solves a problem of the project scheduling problem library with the model of the filming day, for a check. */
final class PublishedProblem {

    private static final int MOST_BYTES = 1024 * 1024;

    private PublishedProblem() {}

    static String solve(Path file, String shown) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new BadInput(
                        Place.of(shown),
                        "a problem takes a few kilobytes, and this file more than 1 MB; name a .sm file.");
            }
            return Psplib.solve(shown, new String(Files.readAllBytes(file), UTF_8))
                    .json();
        } catch (IOException e) {
            throw new BadInput(Place.of(shown), "the file cannot be read; name a .sm file of the library.", e);
        }
    }
}
