package org.misecue.spoken;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Numbers as people say them: cardinals, fractions, mixed numbers, groups ("a couple", "half a dozen") and ranges ("two
 * or three", "twenty five to thirty", "between two and three").
 */
public final class NumberGrammar {

    private static final Set<String> BETWEEN = Set.of("to", "or", "till", "until");
    private static final Set<String> SEARCHING = Set.of("um", "uh", "er", "erm", "maybe");
    private static final Set<String> COUNTED_ON = Words.set("time one go egg layer batch bowl tin tray");
    private static final RationalNumber FIVE = Rationals.of(5);
    private static final RationalNumber TEN = Rationals.of(10);
    private static final RationalNumber TWO = Rationals.of(2);
    private static final RationalNumber THIRTY = Rationals.of(30);
    private static final RationalNumber HUNDRED = Rationals.of(100);
    private static final RationalNumber CLOSE_BY = Rationals.of(3, 2);
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,4}) ?)?([½⅓⅔¼¾⅛⅜⅝⅞])|(\\d{1,3})/(\\d{1,3})");

    private final WordStream words;
    private final Cardinals cardinals;

    public NumberGrammar(WordStream words) {
        this.words = words;
        this.cardinals = new Cardinals(words);
    }

    /** The longest number that begins at the index, if one does. */
    public Optional<SpokenNumber> at(int start) {
        Optional<SpokenNumber> longest = longestAt(start);
        if (longest.isEmpty()) {
            return longest;
        }
        int wall = words.wallWithin(start, longest.get().end());
        return wall == longest.get().end() ? longest : new NumberGrammar(words.until(wall)).longestAt(start);
    }

    private Optional<SpokenNumber> longestAt(int start) {
        if (words.text(start).equals("between") && words.on(Mechanism.RANGES)) {
            return between(start);
        }
        Optional<SpokenNumber> first = one(start);
        if (first.isEmpty()) {
            return first;
        }
        if (!words.on(Mechanism.RANGES)) {
            return first;
        }
        if (!BETWEEN.contains(words.text(first.get().end()))) {
            return searching(start, first.get()).or(() -> first);
        }
        Optional<SpokenNumber> range = range(start, first.get(), first.get().end() + 1);
        return range.isPresent() ? range : first;
    }

    /** "eighteen uh nineteen", "twenty two twenty three": a speaker looking for the number names a range. */
    private Optional<SpokenNumber> searching(int start, SpokenNumber low) {
        int next = low.end();
        while (SEARCHING.contains(words.text(next)) && next - low.end() < 2) {
            next++;
        }
        int from = next;
        return range(start, low, next)
                .filter(range -> from == low.end() || !isSaidAgain(from, range.end()))
                .filter(range -> isStep(
                        range.amount().least().orElse(Rationals.ZERO),
                        range.amount().most().orElse(Rationals.ZERO)));
    }

    /** "fifty uh sixty grams, sixty": who says the second again has found it. */
    private boolean isSaidAgain(int from, int end) {
        String found = words.normal(from, end);
        for (int at = end; at <= end + 2; at++) {
            if (words.normal(at, at + end - from).equals(found)) {
                return true;
            }
        }
        return false;
    }

    /** From one number to the next, or from one round number to the next: what the scales run through is no range. */
    private static boolean isStep(RationalNumber low, RationalNumber high) {
        RationalNumber step = high.subtract(low);
        boolean round = Rationals.isWhole(low.divide(FIVE)) && Rationals.isWhole(high.divide(FIVE));
        return high.compareTo(low.multiply(CLOSE_BY)) <= 0
                && (step.compareTo(Rationals.ONE) <= 0
                        || (step.equals(TWO) && low.compareTo(THIRTY) < 0)
                        || (round && step.compareTo(TEN) <= 0)
                        || (step.equals(HUNDRED) && Rationals.isWhole(low.divide(HUNDRED))));
    }

    private Optional<SpokenNumber> between(int start) {
        return one(start + 1)
                .filter(low -> words.text(low.end()).equals("and"))
                .flatMap(low -> range(start, low, low.end() + 1));
    }

    /** A range rises: "ten to twelve" is one, "two or one" and "ten to two" are not. */
    private Optional<SpokenNumber> range(int start, SpokenNumber low, int next) {
        return one(next)
                .filter(high -> value(high).compareTo(value(low)) > 0)
                .map(high -> new SpokenNumber(
                        start,
                        high.end(),
                        Amount.between(lowerEnd(low, high), value(high)),
                        low.fraction() && high.fraction()));
    }

    /** "two to three hundred": the lower end shares the hundred of the upper one. */
    private RationalNumber lowerEnd(SpokenNumber low, SpokenNumber high) {
        String last = words.text(high.end() - 1);
        long scale = last.equals("hundred") ? 100 : NumberWords.SCALES.getOrDefault(last, 1L);
        String said = words.text(low.end() - 1);
        boolean single = low.end() == low.start() + 1 && (NumberWords.UNITS.containsKey(said) || said.matches("[1-9]"));
        RationalNumber scaled = value(low).multiply(Rationals.of(scale));
        return single && scaled.compareTo(value(high)) < 0 ? scaled : value(low);
    }

    private static RationalNumber value(SpokenNumber number) {
        return number.amount().least().orElse(Rationals.ZERO);
    }

    private Optional<SpokenNumber> one(int start) {
        return group(start).or(() -> written(start)).or(() -> fraction(start)).or(() -> cardinals
                .at(start)
                .map(read -> mixed(start, read)));
    }

    /** "a couple", "a dozen", "half a dozen", "a half dozen", "two dozen", "two and a half dozen", "a baker's dozen". */
    private Optional<SpokenNumber> group(int start) {
        int at = words.normal(start, start + 2).equals("a half") ? start + 1 : start;
        RationalNumber times = Rationals.ONE;
        if (words.text(at).equals("half")) {
            times = Rationals.of(1, 2);
            at++;
        } else if (NumberWords.UNITS.containsKey(words.text(at))) {
            times = Rationals.of(NumberWords.UNITS.getOrDefault(words.text(at), 1));
            at++;
        }
        if (words.text(at).equals("a")) {
            at++;
        }
        if (words.text(at).equals("baker's") && words.text(at + 1).equals("dozen")) {
            return Optional.of(new SpokenNumber(start, at + 2, Amount.of(13), false));
        }
        if (at > start
                && words.text(at).equals("and")
                && words.text(at + 1).equals("a")
                && words.text(at + 2).equals("half")) {
            times = times.add(Rationals.of(1, 2)); // "two and a half dozen"
            at += 3;
        }
        Integer size = NumberWords.GROUPS.get(words.text(at));
        boolean bare = at == start
                && !(words.text(at).equals("couple") && words.text(at + 1).equals("of"));
        if (size == null || bare) {
            return Optional.empty();
        }
        int end = words.text(at + 1).equals("of") ? at + 2 : at + 1;
        return Optional.of(
                new SpokenNumber(start, end, Amount.of(Rationals.of(size).multiply(times)), false));
    }

    /** Fractions in figures: "½", "1½", "1/2", "1 1/2". */
    private Optional<SpokenNumber> written(int start) {
        Optional<RationalNumber> here = figures(words.text(start));
        if (here.isPresent()) {
            return Optional.of(new SpokenNumber(
                    start, start + 1, Amount.of(here.get()), here.get().compareTo(Rationals.ONE) < 0));
        }
        Optional<RationalNumber> after = figures(words.text(start + 1)).filter(f -> f.compareTo(Rationals.ONE) < 0);
        return words.text(start).matches("\\d{1,3}") && after.isPresent()
                ? Optional.of(new SpokenNumber(
                        start,
                        start + 2,
                        Amount.of(
                                Rationals.of(new BigDecimal(words.text(start))).add(after.get())),
                        false))
                : Optional.empty();
    }

    private static Optional<RationalNumber> figures(String text) {
        if (text.isEmpty() || Character.isLetter(text.charAt(0))) {
            return Optional.empty();
        }
        Matcher match = FRACTION.matcher(text);
        if (!match.matches()) {
            return Optional.empty();
        }
        if (match.group(3) != null) {
            long below = Long.parseLong(match.group(4));
            return below == 0 ? Optional.empty() : Optional.of(Rationals.of(Long.parseLong(match.group(3)), below));
        }
        long[] vulgar = NumberWords.VULGAR.getOrDefault(match.group(2).charAt(0), new long[] {0, 1});
        RationalNumber part = Rationals.of(vulgar[0], vulgar[1]);
        return Optional.of(match.group(1) == null ? part : part.add(Rationals.of(Long.parseLong(match.group(1)))));
    }

    /**
     * "half", "a quarter", "three quarters", "three quarter cups". A lone "third" or "fifth" counts a place, not an
     * amount.
     */
    private Optional<SpokenNumber> fraction(int start) {
        String word = words.text(start);
        if (word.equals("half") || (word.equals("quarter") && startsPart(start + 1)) || isThirdOfUnit(start)) {
            return Optional.of(part(start, start + 1, 1, NumberWords.part(word)));
        }
        boolean article = word.equals("a") || word.equals("an") || word.equals("one");
        long count = article ? 1 : NumberWords.UNITS.getOrDefault(word, 0);
        int divisor = NumberWords.part(words.text(start + 1));
        boolean plural = words.text(start + 1).endsWith("s");
        boolean ofUnit = UnitWords.at(words, start + 2).isPresent();
        boolean fits = count > 0 && divisor > 0 && (count == 1 ? !plural && !countsOn(start) : plural || ofUnit);
        return fits ? Optional.of(part(start, start + 2, count, divisor)) : Optional.empty();
    }

    /** "third of a cup", read off a card without its article. */
    private boolean isThirdOfUnit(int start) {
        return words.normal(start, start + 3).equals("third of a")
                && UnitWords.at(words, start + 3).isPresent();
    }

    /** "a third egg" is one more, not a part of one. */
    private boolean countsOn(int start) {
        return words.text(start).equals("a")
                && !words.text(start + 1).equals("half")
                && !words.text(start + 1).equals("quarter")
                && COUNTED_ON.contains(words.text(start + 2));
    }

    private boolean startsPart(int at) {
        String word = words.text(at);
        return word.equals("of")
                || word.equals("a")
                || word.equals("an")
                || UnitWords.at(words, at).isPresent();
    }

    private static SpokenNumber part(int start, int end, long count, int divisor) {
        return new SpokenNumber(start, end, Amount.of(Rationals.of(count, divisor)), true);
    }

    /** "two and a half", "one and three quarters", "2 and a half". */
    private SpokenNumber mixed(int start, Cardinals.Read whole) {
        SpokenNumber alone = new SpokenNumber(start, whole.end(), Amount.of(whole.value()), false);
        if (!words.text(whole.end()).equals("and")) {
            return alone;
        }
        return fraction(whole.end() + 1)
                .map(part -> new SpokenNumber(
                        start, part.end(), Amount.of(whole.value().add(value(part))), false))
                .orElse(alone);
    }
}
