package org.misecue.quantity;

import java.text.Normalizer;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import tech.units.indriya.function.RationalNumber;

/** A number in figures as recipes write it: whole, decimal, fraction, mixed, with the fraction signs of Unicode. */
final class NumberReader {

    private static final String SIGNS = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final String SLASH = "[/⁄∕]";
    private static final Shape FRACTION =
            Shape.of("(?:(?<whole>\\d{1,4})(?:\\h+|\\h*-|\\h+(?:and|&|\\+)\\h+|(?=[" + SIGNS + "⁰¹²³⁴-⁹])))?"
                    + "(?:(?<sign>[" + SIGNS + "])"
                    + "|(?<over>\\d{1,2}|[¹²³⁴-⁹])" + SLASH + "(?<under>16|12|10|[234568]|[₂-₆₈])(?:(?:rd|th)s?\\b)?)");
    private static final Shape DECIMAL = Shape.of(
            "(?<thousands>\\d{1,3}(?:[,'’]\\d{3}|\\h000(?!\\d))++)(?<part>\\.\\d{1,4})?|(?<whole>\\d{0,7})[.,](?<cents>\\d{1,4})|(?<plain>\\d{1,7})");
    /** After a number these would make it another one, or none at all. */
    private static final Shape UNFINISHED =
            Shape.of("[\\d" + SIGNS + "⁄∕]|[.,]\\d|/\\d|\\h*[" + SIGNS + "]|[eE][+-]?\\d|\\h?%|\\h*°?\\h*[:]\\d");

    private static final int MOST_DIGITS = 7;

    private static final List<Reading> READINGS = List.of(NumberReader::fraction, NumberReader::decimal);

    private interface Reading {
        Optional<RationalNumber> read(Cursor cursor);
    }

    private NumberReader() {}

    /** Reads a number above zero that stands here; leaves the cursor alone where there is none. */
    static Optional<RationalNumber> take(Cursor cursor) {
        if (Character.isLetter(cursor.next())) {
            return Optional.empty();
        }
        Optional<RationalNumber> whole = plain(cursor);
        if (whole.isPresent()) {
            return whole;
        }
        int start = cursor.at();
        for (Reading reading : READINGS) {
            Optional<RationalNumber> value = reading.read(cursor);
            if (value.isPresent() && value.get().signum() > 0 && !cursor.sees(UNFINISHED)) {
                return value;
            }
            cursor.backTo(start);
        }
        return Optional.empty();
    }

    /** Most numbers are whole ones with a word behind them, which leaves nothing to doubt. */
    private static Optional<RationalNumber> plain(Cursor cursor) {
        int end = cursor.digitsEnd();
        char sign = cursor.signAt(end);
        char word = cursor.signAt(cursor.blanksEnd(end));
        boolean certain = Character.isLetter(word) && (sign == word ? "eE" : "aA").indexOf(word) < 0;
        if (!certain || end == cursor.at() || end - cursor.at() > MOST_DIGITS) {
            return Optional.empty();
        }
        long value = cursor.digits(end);
        if (value == 0) {
            return Optional.empty();
        }
        cursor.backTo(end);
        return Optional.of(Rationals.of(value));
    }

    private static Optional<RationalNumber> fraction(Cursor cursor) {
        return cursor.take(FRACTION).map(NumberReader::mixed);
    }

    private static RationalNumber mixed(MatchResult found) {
        String whole = found.group(1);
        String fraction = found.group(2) == null ? found.group(3) + "/" + found.group(4) : found.group(2);
        String[] parts = Normalizer.normalize(fraction, Normalizer.Form.NFKC).split(SLASH, 2);
        RationalNumber share = Rationals.of(Long.parseLong(parts[0]), Long.parseLong(parts[1]));
        return whole == null ? share : share.add(Rationals.of(Long.parseLong(whole)));
    }

    private static Optional<RationalNumber> decimal(Cursor cursor) {
        return cursor.take(DECIMAL).map(found -> {
            if (found.group(1) != null) {
                String part = found.group(2) == null ? "" : found.group(2);
                return Rationals.of(found.group(1).replaceAll("\\D", "") + part);
            }
            if (found.group(4) != null) {
                return Rationals.of((found.group(3).isEmpty() ? "0" : found.group(3)) + "." + found.group(4));
            }
            return Rationals.of(found.group(5));
        });
    }
}
