package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/**
 * A number with its unit: "half a teaspoon", "a teaspoon and a half", "an hour and twenty", "one pound four ounces",
 * "gas mark four", "a pinch", "two level tablespoons".
 */
final class QuantityGrammar {

    private static final Set<String> ARTICLES = Set.of("a", "an", "another", "one", "1");
    private static final Set<String> SIZES = Words.set(
            "level other heaped heaping rounded scant generous good big small large little full whole flat more "
                    + "extra single tiny fat decent proper nice other us american metric standard imperial");
    private static final Set<String> POINTERS =
            Words.set("the this that these those it them a an one my our your each another what");
    private static final Set<String> BEFORE_OTHER = Set.of("the", "that", "this");
    private static final Set<String> BEHIND_THE = Set.of("whole", "other");
    /** "a tablespoon and then another, so that's two". */
    private static final Set<String> AFTER_ANOTHER = Set.of("and", "so", "then", "that", "now");

    private static final Set<String> CONTAINED = Set.of("in", "into", "from");

    private final WordStream words;
    private final NumberGrammar numbers;

    QuantityGrammar(WordStream words) {
        this.words = words;
        this.numbers = new NumberGrammar(words);
    }

    /** The quantity that begins at the index, if one does. */
    Optional<SpokenQuantity> at(int start) {
        return heat(start)
                .or(() -> belowZero(start))
                .or(() -> articled(start))
                .or(() -> numbered(start))
                .or(() -> unitAlone(start))
                .map(this::range);
    }

    /** "minus eighteen degrees": a freezer's, and no oven's. */
    private Optional<SpokenQuantity> belowZero(int start) {
        return words.text(start).equals("minus")
                ? numbered(start + 1)
                        .filter(heat -> heat.manner() == Manner.HEAT)
                        .map(heat -> new SpokenQuantity(
                                start,
                                heat.end(),
                                heat.amount().map(RationalNumber::negate),
                                heat.unit(),
                                Manner.HEAT,
                                Optional.of(Aside.of(Aside.Kind.NAMED, "below zero"))))
                : Optional.empty();
    }

    /** "vanilla. Teaspoon.": a unit that is a whole sentence means one of it. */
    private Optional<SpokenQuantity> unitAlone(int start) {
        if (!words.wall(start)) {
            return Optional.empty();
        }
        return UnitWords.at(words, start)
                .filter(unit -> unit.unit().dimension() == Dimension.VOLUME && words.wall(unit.end()))
                .map(unit -> measured(start, unit.end(), Amount.of(1), unit.unit()));
    }

    /** "twenty five minutes to half an hour": a range whose ends both have their unit. */
    private SpokenQuantity range(SpokenQuantity low) {
        String next = words.text(low.end());
        boolean joined = next.equals("to") || next.equals("or");
        if (!joined || low.unit().isEmpty() || !(low.amount() instanceof Amount.Exact) || words.wall(low.end())) {
            return low;
        }
        return articled(low.end() + 1)
                .or(() -> numbered(low.end() + 1))
                .flatMap(high -> spanning(low, high))
                .orElse(low);
    }

    private static Optional<SpokenQuantity> spanning(SpokenQuantity low, SpokenQuantity high) {
        Unit unit = low.unit().orElseThrow();
        boolean alike = high.unit().map(Unit::dimension).equals(Optional.of(unit.dimension()))
                && unit.dimension() == Dimension.DURATION
                && high.amount() instanceof Amount.Exact;
        if (!alike) {
            return Optional.empty();
        }
        Quantity top = new Quantity(high.amount(), high.unit().orElseThrow()).in(unit, Household.METRIC);
        RationalNumber from = low.amount().least().orElse(Rationals.ZERO);
        RationalNumber to = top.amount().least().orElse(Rationals.ZERO);
        return from.compareTo(to) < 0
                ? Optional.of(measured(low.start(), high.end(), Amount.between(from, to), unit))
                : Optional.empty();
    }

    /** "gas four", "gas mark 4", "mark four". */
    private Optional<SpokenQuantity> heat(int start) {
        int at = start;
        if (words.text(at).equals("gas")) {
            at++;
        }
        if (words.text(at).equals("mark")) {
            at++;
        }
        if (at == start) {
            return Optional.empty();
        }
        return numbers.at(at)
                .map(number -> new SpokenQuantity(
                        start,
                        number.end(),
                        number.amount(),
                        Optional.of(Unit.GAS_MARK),
                        Manner.HEAT,
                        Optional.empty()));
    }

    /** "a teaspoon", "another cup", "an hour and a half", "a pinch", "the whole tin". */
    private Optional<SpokenQuantity> articled(int start) {
        boolean article = ARTICLES.contains(words.text(start))
                || (BEFORE_OTHER.contains(words.text(start)) && BEHIND_THE.contains(words.text(start + 1)));
        if (!article) {
            return Optional.empty();
        }
        int at = afterSizes(start + 1);
        Optional<UnitWords.Heard> unit = UnitWords.at(words, at);
        if (contained(start, at)) {
            return Optional.empty();
        }
        if (words.text(start).equals("another")
                && (words.wall(start + 1) || AFTER_ANOTHER.contains(words.text(start + 1)))) {
            return Optional.of(new SpokenQuantity(
                    start, start + 1, Amount.of(1), Optional.empty(), Manner.BARE, Optional.empty()));
        }
        if (isOneMore(start, at)) {
            return Optional.of(
                    new SpokenQuantity(start, at + 1, Amount.of(1), Optional.empty(), Manner.BARE, Optional.empty()));
        }
        return unit.isPresent()
                ? Optional.of(withTail(start, Amount.of(1), unit.get()))
                : derived(start, at, Amount.of(1)).or(() -> packedOrSpoons(start, at, Amount.of(1)));
    }

    /** "another one", "a whole one": one more of what was measured before, or one of it instead. */
    private boolean isOneMore(int start, int at) {
        boolean more = words.text(start).equals("another") || words.text(at - 1).equals("whole");
        return more && words.text(at).equals("one") && !words.text(at + 1).equals("of");
    }

    /** "three millimetres", "half a decilitre": units told in another one. */
    private Optional<SpokenQuantity> derived(int start, int at, Amount amount) {
        return UnitWords.derived(words.text(at))
                .map(one -> measured(
                        start, at + 1, amount.times(one.amount().least().orElseThrow()), one.unit()));
    }

    /** "in a cup", "from a jar": where something is, not how much of it; "stir in a cup of milk" is an amount. */
    private boolean contained(int start, int at) {
        boolean vessel = words.text(at).equals("cup") || QuantityWords.isPacking(words.text(at));
        return vessel
                && CONTAINED.contains(words.text(start - 1))
                && !words.text(at + 1).equals("of");
    }

    private Optional<SpokenQuantity> numbered(int start) {
        if (words.text(start).equals("pinch") || words.text(start).equals("pinches")) {
            return Optional.of(measured(start, start + 1, Amount.of(1), Unit.PINCH));
        }
        Optional<SpokenNumber> number = numbers.at(start);
        if (number.isEmpty()) {
            return Optional.empty();
        }
        SpokenNumber n = number.get();
        Optional<SpokenQuantity> percent = percent(n);
        if (percent.isPresent()) {
            return percent;
        }
        Optional<SpokenQuantity> nested = partOfPart(n);
        if (nested.isPresent()) {
            return nested;
        }
        int at = afterSizes(isPart(n) ? afterPartOf(n.end()) : afterOdd(n.end()));
        Optional<UnitWords.Heard> unit = UnitWords.at(words, at);
        if (unit.isPresent()) {
            return Optional.of(withTail(start, n.amount(), unit.get()));
        }
        Optional<SpokenQuantity> derived = derived(start, at, n.amount());
        if (derived.isPresent()) {
            return derived;
        }
        Optional<SpokenQuantity> packed = packedOrSpoons(start, at, n.amount());
        if (packed.isPresent()) {
            return packed;
        }
        if (words.text(n.end()).startsWith("degree")) {
            return Optional.of(new SpokenQuantity(
                    start, n.end() + 1, n.amount(), Optional.empty(), Manner.HEAT, Optional.empty()));
        }
        return Optional.of(letterOrBare(n));
    }

    /** "half of a half teaspoon". */
    private Optional<SpokenQuantity> partOfPart(SpokenNumber n) {
        if (!n.fraction() || !words.text(n.end()).equals("of")) {
            return Optional.empty();
        }
        int inner = words.text(n.end() + 1).equals("a") ? n.end() + 2 : n.end() + 1;
        return numbers.at(inner).filter(SpokenNumber::fraction).flatMap(part -> UnitWords.at(
                        words, afterSizes(afterPartOf(part.end())))
                .flatMap(unit -> part.amount()
                        .least()
                        .map(share -> measured(n.start(), unit.end(), n.amount().times(share), unit.unit()))));
    }

    private Optional<SpokenQuantity> percent(SpokenNumber n) {
        String next = words.text(n.end());
        boolean two = next.equals("per") && words.text(n.end() + 1).equals("cent");
        if (!two && !next.equals("percent") && !next.equals("%")) {
            return Optional.empty();
        }
        Amount share = n.amount().times(Rationals.of(1, 100));
        int end = n.end() + (two ? 2 : 1);
        return Optional.of(
                new SpokenQuantity(n.start(), end, share, Optional.empty(), Manner.PERCENT, Optional.empty()));
    }

    /** "180 c", "350 f", "160 fan": a letter or "fan" is a scale only after a number that an oven could have. */
    private SpokenQuantity letterOrBare(SpokenNumber n) {
        boolean ovenLike = n.amount().least().orElse(Rationals.ZERO).compareTo(Rationals.of(90)) >= 0;
        String next = words.text(n.end());
        if (ovenLike && (next.equals("c") || next.equals("f"))) {
            Unit scale = next.equals("c") ? Unit.CELSIUS : Unit.FAHRENHEIT;
            return new SpokenQuantity(
                    n.start(), n.end() + 1, n.amount(), Optional.of(scale), Manner.HEAT, Optional.empty());
        }
        int ones = afterSizes(n.end());
        if (ones > n.end()
                && (words.text(ones).equals("one") || words.text(ones).equals("ones"))) {
            // "two large ones", "one level one".
            return new SpokenQuantity(n.start(), ones + 1, n.amount(), Optional.empty(), Manner.BARE, Optional.empty());
        }
        Manner manner = n.fraction() ? Manner.SHARE : ovenLike && next.equals("fan") ? Manner.HEAT : Manner.BARE;
        return new SpokenQuantity(n.start(), afterOdd(n.end()), n.amount(), Optional.empty(), manner, Optional.empty());
    }

    private Optional<SpokenQuantity> packedOrSpoons(int start, int at, Amount amount) {
        if (QuantityWords.isPacking(words.text(at))) {
            return Optional.of(
                    new SpokenQuantity(start, at + 1, amount, Optional.empty(), Manner.PACKED, Optional.empty()));
        }
        if (UnitWords.isSpoon(words.text(at))) {
            return Optional.of(
                    new SpokenQuantity(start, at + 1, amount, Optional.empty(), Manner.SPOONS, Optional.empty()));
        }
        return Optional.empty();
    }

    private static boolean isPart(SpokenNumber number) {
        return number.fraction() || number.amount().most().orElse(Rationals.ONE).compareTo(Rationals.ONE) < 0;
    }

    /** "half a", "half of a", "a quarter of a", "half of one". */
    private int afterPartOf(int index) {
        int at = words.text(index).equals("of") ? index + 1 : index;
        return ARTICLES.contains(words.text(at)) ? at + 1 : index;
    }

    /** "thirty odd grams", "eighty something grams". */
    private int afterOdd(int index) {
        return isOdd(words.text(index)) ? index + 1 : index;
    }

    static boolean isOdd(String word) {
        return word.equals("odd") || word.equals("something") || word.equals("ish");
    }

    private int afterSizes(int index) {
        int at = index;
        while (SIZES.contains(words.text(at)) && at - index < 3) {
            at++;
        }
        return at;
    }

    /** What may follow the unit: "and a half", or a smaller unit of the same kind. */
    private SpokenQuantity withTail(int start, Amount amount, UnitWords.Heard unit) {
        int end = unit.end();
        boolean exact = amount instanceof Amount.Exact;
        int next = words.text(end).equals("and") ? end + 1 : end;
        Optional<SpokenNumber> more = exact ? numbers.at(next) : Optional.empty();
        if (more.isEmpty() || !(more.get().amount() instanceof Amount.Exact tail)) {
            return measured(start, end, amount, unit.unit());
        }
        RationalNumber whole = amount.least().orElse(Rationals.ZERO);
        if (next > end
                && more.get().fraction()
                && !UnitWords.at(words, more.get().end()).isPresent()
                && !sharesOut(more.get().end())) {
            return measured(start, more.get().end(), Amount.of(whole.add(tail.value())), unit.unit());
        }
        return smallerUnit(start, whole, unit, more.get(), tail.value())
                .orElseGet(() -> measured(start, end, amount, unit.unit()));
    }

    /** "a spoon of this and a half of that" is two amounts; "a kilo and a half of apples" is one. */
    private boolean sharesOut(int at) {
        return words.text(at).equals("a") || (words.text(at).equals("of") && POINTERS.contains(words.text(at + 1)));
    }

    /** "one pound four ounces", "an hour and twenty minutes", "an hour and twenty". */
    private Optional<SpokenQuantity> smallerUnit(
            int start, RationalNumber whole, UnitWords.Heard unit, SpokenNumber number, RationalNumber tail) {
        Optional<UnitWords.Heard> second = UnitWords.at(words, number.end());
        boolean pair = second.isPresent()
                && ((unit.unit() == Unit.POUND && second.get().unit() == Unit.OUNCE)
                        || (unit.unit() == Unit.HOUR && second.get().unit() == Unit.MINUTE));
        boolean bareMinutes = unit.unit() == Unit.HOUR
                && words.text(unit.end()).equals("and")
                && second.isEmpty()
                && tail.compareTo(Rationals.of(60)) < 0
                && tail.compareTo(Rationals.of(5)) >= 0;
        if (!pair && !bareMinutes) {
            return Optional.empty();
        }
        Unit small = pair ? second.get().unit() : Unit.MINUTE;
        RationalNumber inBase = unit.unit().toBase(whole, Household.METRIC).add(small.toBase(tail, Household.METRIC));
        RationalNumber total = small.fromBase(inBase, Household.METRIC);
        int end = pair ? second.get().end() : number.end();
        return Optional.of(measured(start, end, Amount.of(total), small));
    }

    private static SpokenQuantity measured(int start, int end, Amount amount, Unit unit) {
        Manner manner = unit.dimension() == Dimension.TEMPERATURE ? Manner.HEAT : Manner.MEASURED;
        return new SpokenQuantity(start, end, amount, Optional.of(unit), manner, Optional.empty());
    }
}
