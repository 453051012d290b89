package org.misecue.spoken;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Whole numbers and decimals, in words and digits: "a hundred and five", "one twenty five", "twelve hundred", "one oh
 * five", "nought point seven five", "2.5", "one 25".
 */
final class Cardinals {

    private static final Pattern DIGITS = Pattern.compile("\\d+(?:\\.\\d+)?");

    /** What a year follows. */
    private static final Set<String> YEAR_LEADS = Set.of("in", "since", "from");

    /** A value and the index after its last word. */
    record Read(RationalNumber value, int end) {}

    /** How a number under a hundred was said: decides what may follow it. */
    private enum Size {
        UNIT,
        TEEN,
        ROUND_TEN,
        TEN_AND_UNIT
    }

    private record Small(long value, int end, Size size) {}

    private static final Set<String> BEFORE_PRONOUN = Set.of(
            "black", "white", "dark", "light", "brown", "big", "small", "other", "red", "green", "plain", "same",
            "new");

    private final WordStream words;

    Cardinals(WordStream words) {
        this.words = words;
    }

    Optional<Read> at(int start) {
        Optional<Read> whole = wholeAt(start).filter(read -> !Ordinals.goesOn(words, read.end()));
        int point = whole.map(Read::end).orElse(start);
        if (words.text(point).equals("point")) {
            Optional<Read> tail = decimalsAt(point + 1);
            if (tail.isPresent()) {
                RationalNumber base = whole.map(Read::value).orElse(Rationals.ZERO);
                return Optional.of(
                        new Read(base.add(tail.get().value()), tail.get().end()));
            }
        }
        return whole;
    }

    private Optional<Read> wholeAt(int start) {
        if (NumberWords.ZEROS.contains(words.text(start))) {
            return Optional.of(new Read(Rationals.ZERO, start + 1));
        }
        if (isDigits(start)) {
            return Optional.of(digits(start));
        }
        Optional<Read> group = group(start);
        return group.map(first -> scaled(first, Long.MAX_VALUE));
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
        Optional<Read> rest = group(next).map(group -> scaled(group, scale));
        if (rest.isEmpty() || rest.get().value().compareTo(Rationals.of(scale)) >= 0) {
            return new Read(value, end);
        }
        return new Read(value.add(rest.get().value()), rest.get().end());
    }

    /** Up to 999, or up to 9,999 as "twelve hundred" and "twelve fifty". */
    private Optional<Read> group(int start) {
        boolean article = words.text(start).equals("a");
        if (article
                && (words.text(start + 1).equals("hundred")
                        || words.text(start + 1).equals("thousand"))) {
            return words.text(start + 1).equals("hundred")
                    ? Optional.of(hundreds(1, start + 1))
                    : Optional.of(new Read(Rationals.ONE, start + 1));
        }
        if (words.text(start).equals("hundred")) {
            // "hundred and fifty of it": many speakers leave the "a" out.
            return Optional.of(hundreds(1, start));
        }
        Optional<Small> small = small(start);
        if (small.isEmpty()) {
            return Optional.empty();
        }
        Small first = small.get();
        Optional<Read> spelt = digitByDigit(first);
        if (spelt.isPresent()) {
            return spelt;
        }
        if (words.text(first.end()).equals("hundred")) {
            return Optional.of(hundreds(first.value(), first.end()));
        }
        return Optional.of(sideBySide(first));
    }

    private Read hundreds(long count, int at) {
        int end = at + 1;
        int next = words.text(end).equals("and") ? end + 1 : end;
        Optional<Small> rest = small(next)
                .filter(small -> small.size() != Size.UNIT || !(beginsAnother(small.end() - 1) || isPart(small.end())))
                .or(() -> smallDigits(next));
        return rest.isPresent()
                ? new Read(
                        Rationals.of(count * 100 + rest.get().value()),
                        rest.get().end())
                : new Read(Rationals.of(count * 100), end);
    }

    /** "one twenty five", "two fifty", "one oh five", "twelve fifty": the hundred is left out. */
    private Read sideBySide(Small first) {
        Read alone = new Read(Rationals.of(first.value()), first.end());
        if (first.size() == Size.TEN_AND_UNIT) {
            return alone;
        }
        if (first.size() == Size.UNIT && NumberWords.OHS.contains(words.text(first.end()))) {
            Integer unit = NumberWords.UNITS.get(words.text(first.end() + 1));
            if (unit != null) {
                return new Read(Rationals.of(first.value() * 100 + unit), first.end() + 2);
            }
        }
        Optional<Small> second = behind(first).or(() -> isPronoun(first) ? Optional.empty() : smallDigits(first.end()));
        if (second.isEmpty()
                || second.get().value() == first.value()
                || second.get().size() == Size.UNIT) {
            return alone;
        }
        if (isRange(first, second.get())) {
            return alone;
        }
        return new Read(
                Rationals.of(first.value() * 100 + second.get().value()),
                second.get().end());
    }

    /** "ten fifteen minutes" is from ten to fifteen, and "since twenty twenty five" is a year. */
    private boolean isRange(Small low, Small high) {
        boolean close = low.value() >= 10 && high.value() > low.value() && 2 * high.value() <= 3 * low.value();
        boolean year = YEAR_LEADS.contains(words.text(low.end() - 2))
                && UnitWords.at(words, high.end()).isEmpty();
        return close && !year;
    }

    /** "one seven five", "eight zero": read out digit by digit; "one two three" is counting. */
    private Optional<Read> digitByDigit(Small first) {
        Integer second = digit(first.end());
        Integer third = digit(first.end() + 1);
        if (first.size() != Size.UNIT || second == null) {
            return Optional.empty();
        }
        boolean counting = second == first.value() + 1 && third != null && third == second + 1;
        if (third != null && !counting && third % 5 == 0 && digit(first.end() + 2) == null) {
            return Optional.of(new Read(Rationals.of(first.value() * 100 + second * 10 + third), first.end() + 2));
        }
        return second == 0 && third == null && words.text(first.end()).equals("zero")
                ? Optional.of(new Read(Rationals.of(first.value() * 10), first.end() + 1))
                : Optional.empty();
    }

    private @Nullable Integer digit(int at) {
        String word = words.text(at);
        return word.equals("zero") ? Integer.valueOf(0) : NumberWords.UNITS.get(word);
    }

    /** "not the black one 75 grams": a one that stands for a thing. */
    private boolean isPronoun(Small first) {
        return first.value() == 1 && BEFORE_PRONOUN.contains(words.text(first.end() - 2));
    }

    private Optional<Small> small(int at) {
        String word = words.text(at);
        Integer unit = NumberWords.UNITS.getOrDefault(word, NumberWords.misheard(word, words.text(at + 1)));
        if (unit != null) {
            return Optional.of(new Small(unit, at + 1, Size.UNIT));
        }
        Integer teen = NumberWords.TEENS.get(word);
        if (teen != null) {
            return Optional.of(new Small(teen, at + 1, Size.TEEN));
        }
        Integer ten = NumberWords.TENS.get(word);
        if (ten == null) {
            return Optional.empty();
        }
        Integer after = NumberWords.UNITS.get(words.text(at + 1));
        return Optional.of(
                after == null
                        ? new Small(ten, at + 1, Size.ROUND_TEN)
                        : new Small(ten + after, at + 2, Size.TEN_AND_UNIT));
    }

    /** What may follow a first number without a hundred between. */
    private Optional<Small> behind(Small first) {
        return small(first.end())
                .map(second -> second.size() == Size.TEN_AND_UNIT && beginsAnother(second.end() - 1)
                        ? new Small(second.value() / 10 * 10, second.end() - 1, Size.ROUND_TEN)
                        : second);
    }

    /**
     * "one eighty, two hundred", "one twenty, one forty": the digit behind a ten begins the next number; "three
     * seventy five, ten minutes" is a heat and a time.
     */
    private boolean beginsAnother(int at) {
        String next = words.text(at + 1);
        boolean time = UnitWords.at(words, at + 2)
                .filter(unit -> unit.unit().dimension() == Dimension.DURATION)
                .isPresent();
        return !time && beginsNumber(next);
    }

    /** "two hundred, three quarters of an hour". */
    private boolean isPart(int at) {
        return words.text(at).endsWith("s") && NumberWords.part(words.text(at)) > 0;
    }

    private static boolean beginsNumber(String next) {
        return next.equals("hundred") || NumberWords.TENS.containsKey(next) || NumberWords.TEENS.containsKey(next);
    }

    /** Two digits after a hundred said in words: "one 25", "two hundred and 50". */
    private Optional<Small> smallDigits(int at) {
        return words.text(at).matches("[1-9]\\d")
                ? Optional.of(new Small(Long.parseLong(words.text(at)), at + 1, Size.TEN_AND_UNIT))
                : Optional.empty();
    }

    private boolean isDigits(int at) {
        return words.text(at).length() <= 12 && DIGITS.matcher(words.text(at)).matches();
    }

    private Read digits(int start) {
        RationalNumber value = Rationals.of(new BigDecimal(words.text(start)));
        int end = start + 1;
        if (words.text(end).equals("hundred")) {
            return Rationals.isWhole(value) && value.compareTo(Rationals.of(100)) < 0
                    ? hundreds(value.longValue(), end)
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
        return small(end + 1)
                .or(() -> smallDigits(end + 1))
                .filter(rest -> rest.size() != Size.UNIT)
                .map(rest -> new Read(hundreds.add(Rationals.of(rest.value())), rest.end()))
                .orElse(new Read(hundreds, end));
    }

    /** The digits after a spoken "point": "five", "two five", "seventy five", "25". */
    private Optional<Read> decimalsAt(int start) {
        StringBuilder digits = new StringBuilder();
        int at = start;
        while (at < words.size()) {
            String word = words.text(at);
            if (NumberWords.OHS.contains(word)) {
                digits.append('0');
                at++;
            } else if (word.matches("\\d{1,6}")) {
                digits.append(word);
                at++;
            } else {
                Optional<Small> small = small(at);
                if (small.isEmpty()) {
                    break;
                }
                digits.append(small.get().value());
                at = small.get().end();
            }
        }
        return digits.isEmpty()
                ? Optional.empty()
                : Optional.of(new Read(Rationals.of(new BigDecimal("0." + digits)), at));
    }
}
