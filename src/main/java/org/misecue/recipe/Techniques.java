package org.misecue.recipe;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is done in a step, told from its words by the table {@code techniques.csv}; a new technique is a new row there. */
final class Techniques {

    /** One row of the table. */
    record Technique(String key, Pattern words, boolean alone, Duration hands, boolean listed) {}

    private record Sighting(Technique technique, int start, int end) {}

    private static final class Standard {
        static final Techniques TABLE = load();
    }

    private static final Pattern FOR = Pattern.compile("\\bfor\\h+(?:the\\h+)?$", Pattern.CASE_INSENSITIVE);
    private static final Pattern THE =
            Pattern.compile("\\b(?:the|your|some)\\h+(?:dry\\h+|wet\\h+)?$", Pattern.CASE_INSENSITIVE);
    private static final Pattern BESIDE =
            Pattern.compile("(?:,|\\bwhile|\\bminutes|\\bmins?)\\h+(?:\\p{L}+ly\\h+)?$", Pattern.CASE_INSENSITIVE);

    private final List<Technique> rows;

    private Techniques(List<Technique> rows) {
        this.rows = rows;
    }

    static Techniques standard() {
        return Standard.TABLE;
    }

    /** The techniques of a step in the order of its words, each once. */
    List<Technique> in(String text) {
        List<Technique> found = new ArrayList<>();
        for (Sighting sighting : sightings(text)) {
            if (sighting.technique.listed && !found.contains(sighting.technique)) {
                found.add(sighting.technique);
            }
        }
        return found;
    }

    /** What goes on during a time that stands at a place of the text: the nearest words before it in its sentence, else after. */
    String around(String text, int start, int end) {
        int from = Sentences.start(text, start);
        int to = Sentences.end(text, end);
        List<Sighting> sightings = sightings(text);
        return sightings.stream()
                .filter(sighting -> sighting.start >= from && sighting.start < start)
                .max(Comparator.comparingInt(Sighting::start))
                .or(() -> sightings.stream()
                        .filter(sighting -> sighting.start >= end && sighting.start < to)
                        .findFirst())
                .or(() -> sightings.stream()
                        .filter(sighting -> sighting.start < from)
                        .reduce((one, other) -> other))
                .map(sighting -> sighting.technique.key.toLowerCase(Locale.ROOT))
                .orElse("");
    }

    /** Whether what goes on needs nobody; a time without words about it is one of waiting. */
    boolean runsAlone(String key) {
        return rows.stream()
                .filter(row -> row.key.equals(key))
                .findFirst()
                .map(Technique::alone)
                .orElse(true);
    }

    private List<Sighting> sightings(String text) {
        List<Sighting> sightings = new ArrayList<>();
        for (Technique row : rows) {
            Matcher words = row.words.matcher(text);
            while (words.find()) {
                if (!isPurpose(text, words.start(), words.end()) && !isThing(text, words.start(), words.end())) {
                    sightings.add(new Sighting(row, words.start(), words.end()));
                }
            }
        }
        sightings.sort(Comparator.comparingInt(Sighting::start).thenComparing(sighting -> -sighting.end));
        return sightings;
    }

    /** "For brushing" says what something will be for, not what is done now. */
    private static boolean isPurpose(String text, int start, int end) {
        return text.substring(start, end).endsWith("ing")
                && FOR.matcher(text.substring(0, start)).find();
    }

    /** "The chopped nuts" are chopped before, and "the dry mix" is a thing. */
    private static boolean isThing(String text, int start, int end) {
        return !text.substring(start, end).strip().contains(" ")
                && THE.matcher(text.substring(0, start)).find();
    }

    /** Those that go on beside a time stated for something else: the stirring of "simmer for 8 minutes, stirring". */
    List<Technique> beside(String text) {
        return sightings(text).stream()
                .filter(sighting ->
                        BESIDE.matcher(text.substring(0, sighting.start)).find())
                .filter(sighting -> text.substring(sighting.start, sighting.end).endsWith("ing"))
                .map(Sighting::technique)
                .toList();
    }

    private static Techniques load() {
        return new Techniques(
                TableFile.rows("techniques.csv").stream().map(Techniques::row).toList());
    }

    private static Technique row(String line) {
        // The stroke also divides regular expressions; columns have blanks around it.
        String[] cells = line.split(" \\| ", -1);
        String key = cells[0].strip();
        StringBuilder words = new StringBuilder();
        for (String word : cells[1].split(" ; ", -1)) {
            words.append(words.isEmpty() ? "" : "|")
                    .append("(?<![\\p{L}-])(?:")
                    .append(word.strip().replace(" ", "\\h+"))
                    .append(")");
        }
        return new Technique(
                key.toLowerCase(Locale.ROOT),
                Pattern.compile(words.toString(), Pattern.CASE_INSENSITIVE),
                cells[2].strip().equals("alone"),
                Duration.ofMinutes(Long.parseLong(cells[3].strip())),
                !key.equals(key.toUpperCase(Locale.ROOT)));
    }
}
