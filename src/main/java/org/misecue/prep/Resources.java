package org.misecue.prep;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/** The tables that come with the program. */
final class Resources {

    private Resources() {}

    static <T> T yaml(String file, TypeReference<T> type) {
        try (InputStream in = Objects.requireNonNull(Resources.class.getResourceAsStream(file), file)) {
            return new ObjectMapper(new YAMLFactory()).readValue(in, type);
        } catch (IOException e) {
            throw new UncheckedIOException(file + " in the program could not be read", e);
        }
    }

    /** The rows of a table whose cells are split by "|"; lines that begin with "#" say what they mean. */
    static List<List<String>> rows(String file) {
        try (InputStream in = Objects.requireNonNull(Resources.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank() && !line.startsWith("#"))
                    .map(line -> Arrays.stream(line.split("\\|", -1))
                            .map(String::strip)
                            .toList())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(file + " in the program could not be read", e);
        }
    }
}
