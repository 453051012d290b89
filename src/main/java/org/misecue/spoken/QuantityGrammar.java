package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
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
    private static final Set<String> SIZES =
            Words.set("level heaped heaping rounded scant generous good big small large little full whole flat more "
                    + "extra single tiny fat decent proper nice other us american metric standard imperial");
    private static final Set<String> PACKINGS =
            Words.set("tin tins can cans jar jars packet packets pack packs sachet sachets carton cartons tub tubs bag "
                    + "bags block blocks bottle bottles punnet punnets envelope envelopes");
    private static final Set<String> CONTAINED = Set.of("in", "into", "from");

    private final WordStream words;
    private final NumberGrammar numbers;

    QuantityGrammar(WordStream words) {
        this.words = words;
        this.numbers = new NumberGrammar(words);
    }

    /** The quantity that begins at the index, if one does. */
    Optional<SpokenQuantity> at(int start) {
        return heat(start).or(() -> articled(start)).or(() -> numbered(start));
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
                        start, number.end(), number.amount(), Optional.of(Unit.GAS_MARK), Manner.HEAT, ""));
    }

    /** "a teaspoon", "another cup", "an hour and a half", "a pinch", "the whole tin". */
    private Optional<SpokenQuantity> articled(int start) {
        boolean article = ARTICLES.contains(words.text(start))
                || (words.text(start).equals("the") && words.text(start + 1).equals("whole"));
        if (!article) {
            return Optional.empty();
        }
        int at = afterSizes(start + 1);
        Optional<UnitWords.Heard> unit = UnitWords.at(words, at);
        if (unit.isPresent() && !contained(start, unit.get().unit())) {
            return Optional.of(withTail(start, Amount.of(1), unit.get()));
        }
        return packedOrSpoons(start, at, Amount.of(1));
    }

    /** "in a cup" is where something is, not how much of it. */
    private boolean contained(int start, Unit unit) {
        return unit == Unit.CUP && CONTAINED.contains(words.text(start - 1));
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
        int at = afterSizes(isPart(n) ? afterPartOf(n.end()) : n.end());
        Optional<UnitWords.Heard> unit = UnitWords.at(words, at);
        if (unit.isPresent()) {
            return Optional.of(withTail(start, n.amount(), unit.get()));
        }
        Optional<SpokenQuantity> packed = packedOrSpoons(start, at, n.amount());
        if (packed.isPresent()) {
            return packed;
        }
        if (words.text(n.end()).startsWith("degree")) {
            return Optional.of(new SpokenQuantity(start, n.end() + 1, n.amount(), Optional.empty(), Manner.HEAT, ""));
        }
        return Optional.of(letterOrBare(n));
    }

    /** "180 c", "350 f", "160 fan": a letter or "fan" is a scale only after a number that an oven could have. */
    private SpokenQuantity letterOrBare(SpokenNumber n) {
        boolean ovenLike = n.amount().least().orElse(Rationals.ZERO).compareTo(Rationals.of(90)) >= 0;
        String next = words.text(n.end());
        if (ovenLike && (next.equals("c") || next.equals("f"))) {
            Unit scale = next.equals("c") ? Unit.CELSIUS : Unit.FAHRENHEIT;
            return new SpokenQuantity(n.start(), n.end() + 1, n.amount(), Optional.of(scale), Manner.HEAT, "");
        }
        Manner manner = n.fraction() ? Manner.SHARE : ovenLike && next.equals("fan") ? Manner.HEAT : Manner.BARE;
        return new SpokenQuantity(n.start(), n.end(), n.amount(), Optional.empty(), manner, "");
    }

    static boolean isPacking(String word) {
        return PACKINGS.contains(word);
    }

    private Optional<SpokenQuantity> packedOrSpoons(int start, int at, Amount amount) {
        if (PACKINGS.contains(words.text(at))) {
            return Optional.of(new SpokenQuantity(start, at + 1, amount, Optional.empty(), Manner.PACKED, ""));
        }
        if (UnitWords.isSpoon(words.text(at))) {
            return Optional.of(new SpokenQuantity(start, at + 1, amount, Optional.empty(), Manner.SPOONS, ""));
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
                && !words.text(more.get().end()).equals("of")
                && !words.text(more.get().end()).equals("a")) {
            return measured(start, more.get().end(), Amount.of(whole.add(tail.value())), unit.unit());
        }
        return smallerUnit(start, whole, unit, more.get(), tail.value())
                .orElseGet(() -> measured(start, end, amount, unit.unit()));
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
        return new SpokenQuantity(start, end, amount, Optional.of(unit), manner, "");
    }
}
