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

    private record Spelling(String word, Found found) {

        /** Where it ends if it stands here, with its plural and its stop; −1 if it does not. */
        int end(String text, int at) {
            int end = at + word.length();
            if (!text.regionMatches(word.length() > 1, at, word, 0, word.length())) {
                return -1;
            }
            if (!Character.isLetter(word.codePointBefore(word.length()))) {
                return end;
            }
            return word.length() == 1 ? letterEnd(text, end) : wordEnd(text, end);
        }

        private static int letterEnd(String text, int end) {
            if (Cursor.sign(text, end) == '.' && !goesOn(text, end + 1)) {
                return end + 1;
            }
            return goesOn(text, end) ? -1 : end;
        }

        private static int wordEnd(String text, int end) {
            int plural = "sſ".indexOf(Character.toLowerCase(Cursor.sign(text, end))) >= 0 ? stopEnd(text, end + 1) : -1;
            return plural >= 0 ? plural : stopEnd(text, end);
        }

        private static int stopEnd(String text, int end) {
            if (Cursor.isOfWord(Cursor.sign(text, end))) {
                return -1;
            }
            if (Cursor.sign(text, end) == '.' && !isApostrophe(Cursor.sign(text, end + 1))) {
                return end + 1;
            }
            return isApostrophe(Cursor.sign(text, end)) ? -1 : end;
        }

        private static boolean goesOn(String text, int at) {
            char sign = Cursor.sign(text, at);
            return Character.isLetter(sign) || (sign >= '0' && sign <= '9') || isApostrophe(sign);
        }

        private static boolean isApostrophe(char sign) {
            return sign == '\'' || sign == '’';
        }
    }

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
            if (shy ? cursor.skip(INCHES_OF_SOMETHING) : cursor.skip(spelling::end)) {
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
        RationalNumber times = cells[2].equals("1") ? Rationals.ONE : Rationals.of(cells[2]);
        return new Spelling(word, new Found(unit, times));
    }
}
