package org.misecue.quantity;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tech.units.indriya.function.RationalNumber;

/** The spellings of units, from {@code unit-words.csv}: one row per spelling. */
final class UnitWords {

    /** A unit that was read: "cl" is ten times a millilitre. */
    record Found(Unit unit, RationalNumber times) {}

    private record Spelling(Pattern pattern, String word, Found found) {}

    /** By the letter or sign that they begin with, the longest first. */
    private static final Map<Character, List<Spelling>> SPELLINGS =
            load().stream().collect(Collectors.groupingBy(spelling -> folded(spelling.word.charAt(0))));

    private static final Pattern INCHES_OF_SOMETHING = Pattern.compile(
            "in\\b\\.?(?=\\h*$|[\\h-]+(?:piece|knob|length|thumb|stick|slice|strip|round|square|cube)|\\h*\\))");

    private UnitWords() {}

    /** The longest spelling that stands here. */
    static Optional<Found> take(Cursor cursor) {
        for (Spelling spelling : SPELLINGS.getOrDefault(folded(cursor.next()), List.of())) {
            boolean shy = spelling.found.unit == Unit.INCH && spelling.word.length() == 2;
            if (cursor.seesWords(spelling.word) && cursor.skip(shy ? INCHES_OF_SOMETHING : spelling.pattern)) {
                return Optional.of(spelling.found);
            }
        }
        return Optional.empty();
    }

    private static char folded(char sign) {
        return Character.toLowerCase(Character.toUpperCase(sign));
    }

    private static List<Spelling> load() {
        List<Spelling> spellings = new ArrayList<>();
        try (InputStream stream = Objects.requireNonNull(UnitWords.class.getResourceAsStream("unit-words.csv"));
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(UnitWords::spelling)
                    .forEach(spellings::add);
        } catch (IOException e) {
            throw new UncheckedIOException("unit-words.csv cannot be read", e);
        }
        spellings.sort(Comparator.<Spelling>comparingInt(spelling -> spelling.word.length())
                .reversed());
        return List.copyOf(spellings);
    }

    private static Spelling spelling(String row) {
        String[] cells = row.split(",", -1);
        String word = cells[0].equals("\"\"\"\"") ? "\"" : cells[0];
        Unit unit = Unit.ofCode(cells[1]).orElseThrow(() -> new IllegalStateException("unit-words.csv: " + row));
        boolean oneLetter = word.length() == 1;
        boolean endsInLetter = Character.isLetter(word.codePointBefore(word.length()));
        String ending = !endsInLetter ? "" : oneLetter ? "\\.?(?![\\p{L}\\d'’])" : "s?\\b\\.?(?!['’])";
        Pattern pattern = Pattern.compile(
                Pattern.quote(word) + ending, oneLetter ? 0 : Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
        return new Spelling(pattern, word, new Found(unit, Rationals.of(cells[2])));
    }
}
