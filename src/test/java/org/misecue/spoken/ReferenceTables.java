package org.misecue.spoken;

import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** The sentences, what the other recogniser finds in them, and where and why we hear something else. */
final class ReferenceTables {

    /**
     * One find of the other recogniser, as {@code src/test/recogniser/recognise.mjs} wrote it.
     *
     * @param kind what it takes the find for; "none" is the only row of a sentence in which it finds nothing
     * @param at the character of the sentence at which the text begins
     */
    record Find(String sentence, String kind, String text, String at, String value, String unit) {}

    /** What we and the other recogniser make of the same words, and why we are right. */
    record Difference(String sentence, String ours, String theirs, String reason) {}

    private ReferenceTables() {}

    static List<String> sentences() {
        try (InputStream in = open("reference-sentences.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Find> finds() {
        return rows(Find.class, "reference.csv");
    }

    static List<Difference> differences() {
        return rows(Difference.class, "reference-differences.csv");
    }

    private static <T> List<T> rows(Class<T> type, String name) {
        try (InputStream in = open(name)) {
            return new CsvMapper()
                    .readerFor(type)
                    .with(CsvSchema.emptySchema().withHeader())
                    .<T>readValues(in)
                    .readAll();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream open(String name) {
        return Objects.requireNonNull(ReferenceTables.class.getResourceAsStream(name), name);
    }
}
