package org.misecue.recipe;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The tables that come with this package. */
final class TableFile {

    private TableFile() {}

    /** The rows of a table without its comments, which begin with "#", and without empty lines. */
    static List<String> rows(String file) {
        try (InputStream stream = Objects.requireNonNull(TableFile.class.getResourceAsStream(file), file);
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }
}
