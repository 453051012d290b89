package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Rationals;
import org.misecue.spoken.SmallNumbers.Size;
import org.misecue.spoken.SmallNumbers.Small;

/**
 * Numbers up to 999, or up to 9,999 as "twelve hundred": with their hundred, without it ("one twenty five") and digit by
 * digit ("one seven five").
 */
final class SpokenHundreds {

    /** What a year follows. */
    private static final Set<String> YEAR_LEADS = Set.of("in", "since", "from");

    private static final Set<String> BEFORE_PRONOUN = Set.of(
            "black", "white", "dark", "light", "brown", "big", "small", "other", "red", "green", "plain", "same",
            "new");

    private final WordStream words;
    private final SmallNumbers small;

    SpokenHundreds(WordStream words, SmallNumbers small) {
        this.words = words;
        this.small = small;
    }

    Optional<Cardinals.Read> at(int start) {
        if (!words.on(Mechanism.NUMBER_WORDS)) {
            return Optional.empty();
        }
        boolean article = words.text(start).equals("a");
        if (article && words.text(start + 1).equals("thousand")) {
            return Optional.of(new Cardinals.Read(Rationals.ONE, start + 1));
        }
        // "hundred and fifty of it": many speakers leave the "a" out.
        int hundred = article ? start + 1 : start;
        return words.text(hundred).equals("hundred")
                ? Optional.of(hundreds(1, hundred))
                : small.at(start).map(this::beginningWith);
    }

    private Cardinals.Read beginningWith(Small first) {
        Optional<Cardinals.Read> spelt = digitByDigit(first);
        if (spelt.isPresent()) {
            return spelt.get();
        }
        return words.text(first.end()).equals("hundred") ? hundreds(first.value(), first.end()) : sideBySide(first);
    }

    /** So many hundreds, with what follows them; the "hundred" stands at the index. */
    Cardinals.Read hundreds(long count, int at) {
        int end = at + 1;
        int next = words.text(end).equals("and") ? end + 1 : end;
        Optional<Small> rest = small.at(next)
                .filter(found ->
                        found.size() != Size.UNIT || !(small.beginsAnother(found.end() - 1) || isPart(found.end())))
                .or(() -> small.digits(next));
        return rest.isPresent()
                ? new Cardinals.Read(
                        Rationals.of(count * 100 + rest.get().value()),
                        rest.get().end())
                : new Cardinals.Read(Rationals.of(count * 100), end);
    }

    /** "one twenty five", "two fifty", "one oh five", "twelve fifty": the hundred is left out. */
    private Cardinals.Read sideBySide(Small first) {
        Cardinals.Read alone = new Cardinals.Read(Rationals.of(first.value()), first.end());
        if (first.size() == Size.TEN_AND_UNIT || !words.on(Mechanism.HUNDREDS_LEFT_OUT)) {
            return alone;
        }
        if (first.size() == Size.UNIT && NumberWords.OHS.contains(words.text(first.end()))) {
            Integer unit = NumberWords.UNITS.get(words.text(first.end() + 1));
            if (unit != null) {
                return new Cardinals.Read(Rationals.of(first.value() * 100 + unit), first.end() + 2);
            }
        }
        Optional<Small> second =
                behind(first).or(() -> isPronoun(first) ? Optional.empty() : small.digits(first.end()));
        if (second.isEmpty()
                || second.get().value() == first.value()
                || second.get().size() == Size.UNIT) {
            return alone;
        }
        if (isRange(first, second.get())) {
            return alone;
        }
        return new Cardinals.Read(
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
    private Optional<Cardinals.Read> digitByDigit(Small first) {
        if (small.readsOutTen(first.end() - 1) && words.on(Mechanism.HUNDREDS_LEFT_OUT)) {
            return Optional.of(new Cardinals.Read(Rationals.of(first.value() * 10), first.end() + 1));
        }
        Integer second = small.digit(first.end());
        Integer third = small.digit(first.end() + 1);
        if (first.size() != Size.UNIT || second == null || !words.on(Mechanism.HUNDREDS_LEFT_OUT)) {
            return Optional.empty();
        }
        boolean counting = second == first.value() + 1 && third != null && third == second + 1;
        if (third != null && !counting && third % 5 == 0 && small.digit(first.end() + 2) == null) {
            return Optional.of(
                    new Cardinals.Read(Rationals.of(first.value() * 100 + second * 10 + third), first.end() + 2));
        }
        return second == 0 && third == null && words.text(first.end()).equals("zero")
                ? Optional.of(new Cardinals.Read(Rationals.of(first.value() * 10), first.end() + 1))
                : Optional.empty();
    }

    /** "not the black one 75 grams": a one that stands for a thing. */
    private boolean isPronoun(Small first) {
        return first.value() == 1 && BEFORE_PRONOUN.contains(words.text(first.end() - 2));
    }

    /** What may follow a first number without a hundred between. */
    private Optional<Small> behind(Small first) {
        return small.at(first.end())
                .map(second -> second.size() == Size.TEN_AND_UNIT && small.beginsAnother(second.end() - 1)
                        ? new Small(second.value() / 10 * 10, second.end() - 1, Size.ROUND_TEN)
                        : second);
    }

    /** "two hundred, three quarters of an hour". */
    private boolean isPart(int at) {
        return words.text(at).endsWith("s") && NumberWords.part(words.text(at)) > 0;
    }
}
