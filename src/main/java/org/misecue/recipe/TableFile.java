package org.misecue.recipe;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The tables that come with the program. */
public final class TableFile {

    private TableFile() {}

    /** The rows of a table of this package. */
    static List<String> rows(String file) {
        return rows(TableFile.class, file);
    }

    /**
     * The rows of a table without its comments, which begin with "#", and without empty lines.
     *
     * @param beside a class of the table's package
     */
    public static List<String> rows(Class<?> beside, String file) {
        try (InputStream stream = Objects.requireNonNull(beside.getResourceAsStream(file), file);
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file + " cannot be read", e);
        }
    }
}
