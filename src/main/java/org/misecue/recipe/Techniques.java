package org.misecue.recipe;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Beginnings;

/** What is done in a step, told from its words by the table {@code techniques.csv}; a new technique is a new row there. */
final class Techniques {

    /** One row of the table. */
    record Technique(String key, Pattern words, boolean alone, Duration hands, boolean listed) {}

    private static final class Standard {
        static final Techniques TABLE = load();
    }

    private static final Pattern FOR = Pattern.compile("\\bfor\\h+(?:the\\h+)?$", Pattern.CASE_INSENSITIVE);
    private static final Pattern THE =
            Pattern.compile("\\b(?:the|your|some)\\h+(?:dry\\h+|wet\\h+)?$", Pattern.CASE_INSENSITIVE);
    private final List<Technique> rows;
    private final Map<String, List<Technique>> byLetters;

    private Techniques(List<Technique> rows) {
        this.rows = rows;
        this.byLetters = byLetters(rows);
    }

    static Techniques standard() {
        return Standard.TABLE;
    }

    /** Whether what goes on needs nobody; a time without words about it is one of waiting. */
    boolean runsAlone(String key) {
        return rows.stream()
                .filter(row -> row.key.equals(key))
                .findFirst()
                .map(Technique::alone)
                .orElse(true);
    }

    /** The keys of those that steps list. */
    List<String> listed() {
        return rows.stream()
                .filter(Technique::listed)
                .map(Technique::key)
                .distinct()
                .toList();
    }

    /** Every technique of a step, in the order of its words. */
    Sightings in(String step) {
        List<Sightings.Sighting> found = new ArrayList<>();
        for (int at = 0; at + 1 < step.length(); at++) {
            if (Character.isLetter(step.charAt(at)) && (at == 0 || !isInWord(step.charAt(at - 1)))) {
                addAt(at, step, found);
            }
        }
        found.removeIf(each -> isPurpose(step, each.start(), each.end()) || isThing(step, each.start(), each.end()));
        found.sort(Comparator.comparingInt(Sightings.Sighting::start).thenComparing(each -> -each.end()));
        return new Sightings(step, List.copyOf(found));
    }

    /** What begins here; a row goes on only behind its last words. */
    private void addAt(int start, String step, List<Sightings.Sighting> found) {
        String letters = step.substring(start, start + Beginnings.LETTERS).toLowerCase(Locale.ROOT);
        for (Technique row : byLetters.getOrDefault(letters, List.of())) {
            Matcher words = row.words.matcher(step).region(start, step.length());
            words.useTransparentBounds(true);
            if (words.lookingAt() && found.stream().noneMatch(each -> each.technique() == row && each.end() > start)) {
                found.add(new Sightings.Sighting(row, start, words.end()));
            }
        }
    }

    private static boolean isInWord(char sign) {
        return sign == '-' || Character.isLetter(sign);
    }

    /** "For brushing" says what something will be for, not what is done now. */
    private static boolean isPurpose(String text, int start, int end) {
        return text.substring(start, end).endsWith("ing") && Back.matches(FOR, text, start);
    }

    /** "The chopped nuts" are chopped before, and "the dry mix" is a thing. */
    private static boolean isThing(String text, int start, int end) {
        return !text.substring(start, end).strip().contains(" ") && Back.matches(THE, text, start);
    }

    /** The rows by the letters that their words begin with. */
    private static Map<String, List<Technique>> byLetters(List<Technique> rows) {
        Map<String, List<Technique>> index = new HashMap<>();
        for (Technique row : rows) {
            Beginnings.of(row.words).forEach(letters -> index.computeIfAbsent(letters, each -> new ArrayList<>())
                    .add(row));
        }
        return index;
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
