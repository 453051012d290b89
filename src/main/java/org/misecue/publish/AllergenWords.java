package org.misecue.publish;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.misecue.pantry.Allergen;

/** The words of ingredient lines that name an allergen, from {@code allergen-words.csv}; read on first use. */
final class AllergenWords {

    private static final String FILE = "allergen-words.csv";

    /** A stretch of a text, {@code [from, to)}, and every row for the words that stand there. */
    record Match(int from, int to, List<AllergenWord> rows) {}

    private final Map<String, List<AllergenWord>> rows;
    private final Pattern anyOfThem;

    private AllergenWords(List<AllergenWord> all) {
        rows = all.stream()
                .collect(Collectors.groupingBy(AllergenWord::words, LinkedHashMap::new, Collectors.toList()));
        String alternatives = rows.keySet().stream()
                .sorted((one, other) -> other.length() - one.length())
                .map(Pattern::quote)
                .collect(Collectors.joining("|"));
        anyOfThem = Pattern.compile(
                "(?<![\\p{L}\\p{N}])(" + alternatives + ")(?:es|s)?(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    static AllergenWords standard() {
        return Standard.WORDS;
    }

    /** Every match in the order of the text, the longest words first where several begin together. */
    List<Match> in(String text) {
        List<Match> matches = new ArrayList<>();
        Matcher matcher = anyOfThem.matcher(text);
        while (matcher.find()) {
            List<AllergenWord> found = rows.getOrDefault(matcher.group(1).toLowerCase(Locale.ROOT), List.of());
            found.stream().findFirst().ifPresent(first -> {
                boolean toTheEnd = first.to() == first.words().length();
                int to = toTheEnd ? matcher.end() : matcher.start() + first.to();
                matches.add(new Match(matcher.start() + first.from(), to, found));
            });
        }
        return matches;
    }

    private static final class Standard {
        static final AllergenWords WORDS = read();
    }

    private static AllergenWords read() {
        CsvSchema schema = CsvSchema.emptySchema().withHeader().withComments();
        try (InputStream in = Objects.requireNonNull(AllergenWords.class.getResourceAsStream(FILE), FILE);
                MappingIterator<Map<String, String>> lines = new CsvMapper()
                        .enable(CsvParser.Feature.ALLOW_COMMENTS)
                        .readerFor(new TypeReference<Map<String, String>>() {})
                        .with(schema)
                        .readValues(in)) {
            return new AllergenWords(
                    lines.readAll().stream().map(AllergenWords::row).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(FILE + " cannot be read", e);
        }
    }

    private static AllergenWord row(Map<String, String> cells) {
        String marked = cell(cells, "words");
        String words = marked.replace("[", "").replace("]", "");
        int from = Math.max(marked.indexOf('['), 0);
        int to = marked.contains("]") ? marked.indexOf(']') - 1 : words.length();
        String substance = cell(cells, "substance");
        return new AllergenWord(
                words,
                from,
                to,
                substance.equals("NONE") ? Optional.empty() : Optional.of(Allergen.valueOf(substance)),
                cell(cells, "called"),
                AllergenWord.How.valueOf(cell(cells, "how").toUpperCase(Locale.ROOT)));
    }

    private static String cell(Map<String, String> cells, String name) {
        return Objects.requireNonNull(cells.get(name), () -> FILE + ": a row without " + name + ": " + cells);
    }
}
