package org.misecue.spoken;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Whole numbers and decimals, in words and digits: "a hundred and five", "one twenty five", "twelve hundred", "one oh
 * five", "nought point seven five", "2.5", "one 25".
 */
final class Cardinals {

    private static final Pattern DIGITS = Pattern.compile("\\d+(?:\\.\\d+)?");

    /** A value and the index after its last word. */
    record Read(RationalNumber value, int end) {}

    private final WordStream words;
    private final SmallNumbers small;
    private final SpokenHundreds hundreds;
    private final Decimals decimals;

    Cardinals(WordStream words) {
        this.words = words;
        this.small = new SmallNumbers(words);
        this.hundreds = new SpokenHundreds(words, small);
        this.decimals = new Decimals(words, small);
    }

    Optional<Read> at(int start) {
        Optional<Read> whole = wholeAt(start).filter(read -> !Ordinals.goesOn(words, read.end()));
        int point = whole.map(Read::end).orElse(start);
        if (words.text(point).equals("point") || isComma(point)) {
            Optional<Read> tail = decimals.at(point + 1);
            if (tail.isPresent()) {
                RationalNumber base = whole.map(Read::value).orElse(Rationals.ZERO);
                return Optional.of(
                        new Read(base.add(tail.get().value()), tail.get().end()));
            }
        }
        return whole;
    }

    /** "one comma five kilo", as much of Europe has it: only with a measure behind the digits. */
    private boolean isComma(int at) {
        return words.text(at).equals("comma")
                && decimals.at(at + 1)
                        .filter(tail -> UnitWords.at(words, tail.end()).isPresent())
                        .isPresent();
    }

    private Optional<Read> wholeAt(int start) {
        if (NumberWords.ZEROS.contains(words.text(start))) {
            return Optional.of(new Read(Rationals.ZERO, start + 1));
        }
        if (isDigits(start)) {
            return Optional.of(digits(start));
        }
        return hundreds.at(start).map(this::withoutRepeat).map(first -> scaled(first, Long.MAX_VALUE));
    }

    /** "a hundred and sixty, one sixty" is said twice: the one begins it again. */
    private Read withoutRepeat(Read first) {
        int last = first.end() - 1;
        Optional<Read> again = NumberWords.UNITS.containsKey(words.text(last)) ? hundreds.at(last) : Optional.empty();
        return again.filter(second -> second.end() > first.end())
                .filter(second -> second.value().compareTo(first.value()) < 0
                        && first.value().subtract(second.value()).compareTo(Rationals.of(10)) < 0)
                .map(second -> new Read(second.value(), last))
                .orElse(first);
    }

    /** "two thousand and fifty": groups before thousand, million and so on, each scale smaller than the one before. */
    private Read scaled(Read first, long below) {
        Long scale = NumberWords.SCALES.get(words.text(first.end()));
        if (scale == null || scale >= below) {
            return first;
        }
        RationalNumber value = first.value().multiply(Rationals.of(scale));
        int end = first.end() + 1;
        int next = words.text(end).equals("and") ? end + 1 : end;
        Optional<Read> rest = hundreds.at(next).map(group -> scaled(group, scale));
        if (rest.isEmpty() || rest.get().value().compareTo(Rationals.of(scale)) >= 0) {
            return new Read(value, end);
        }
        return new Read(value.add(rest.get().value()), rest.get().end());
    }

    private boolean isDigits(int at) {
        return words.text(at).length() <= 12 && DIGITS.matcher(words.text(at)).matches();
    }

    private Read digits(int start) {
        RationalNumber value = Rationals.of(new BigDecimal(words.text(start)));
        int end = start + 1;
        if (words.text(end).equals("hundred")) {
            return Rationals.isWhole(value) && value.compareTo(Rationals.of(100)) < 0
                    ? hundreds.hundreds(value.longValue(), end)
                    : new Read(value.multiply(Rationals.of(100)), end + 1);
        }
        if (words.text(start).matches("[1-9]") && words.text(end).matches("[1-9]\\d") && isOneNumber(end)) {
            // "4 75 of the flour": the recogniser heard "four seventy five".
            long joined = Long.parseLong(words.text(start) + words.text(end));
            return new Read(Rationals.of(joined), end + 1);
        }
        if (NumberWords.SCALES.containsKey(words.text(end))) {
            return scaled(new Read(value, end), Long.MAX_VALUE);
        }
        return value.compareTo(Rationals.of(100)) >= 0 ? andTail(value, end) : new Read(value, end);
    }

    /** Two groups of digits are one number unless the second has a measure that comes in numbers: "2 20 cm tins". */
    private boolean isOneNumber(int second) {
        boolean rough = !words.text(second).endsWith("0") && !words.text(second).endsWith("5");
        String next = words.text(second + 1);
        Optional<UnitWords.Heard> unit = UnitWords.at(words, second + 1);
        boolean sized = unit.isPresent()
                && (unit.get().unit().dimension() == Dimension.LENGTH
                        || unit.get().unit().dimension() == Dimension.DURATION
                        || QuantityWords.isPacking(words.text(unit.get().end())));
        boolean counted = next.length() > 3 && next.endsWith("s") && unit.isEmpty() && !next.equals("this");
        return !rough && !sized && !counted;
    }

    /** "100 and 25", "100 and twenty five": a recogniser that wrote the hundred in digits. */
    private Read andTail(RationalNumber hundreds, int end) {
        boolean round = Rationals.isWhole(hundreds.divide(Rationals.of(100)));
        if (!round || !words.text(end).equals("and")) {
            return new Read(hundreds, end);
        }
        return small.at(end + 1)
                .or(() -> small.digits(end + 1))
                .filter(rest -> rest.size() != SmallNumbers.Size.UNIT)
                .map(rest -> new Read(hundreds.add(Rationals.of(rest.value())), rest.end()))
                .orElse(new Read(hundreds, end));
    }
}
