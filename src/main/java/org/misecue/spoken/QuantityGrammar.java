package org.misecue.spoken;

import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/**
 * A number with its unit: "half a teaspoon", "a teaspoon and a half", "an hour and twenty", "one pound four ounces",
 * "gas mark four", "a pinch", "two level tablespoons".
 */
final class QuantityGrammar {

    private static final Set<String> OPENERS = Set.of("and", "then", "plus", "so");

    /** Before a cup or spoon that is a thing: "the cup", "a measuring cup". */
    private static final Set<String> NO_ONE_MEANT =
            Words.set("the this that your my our each per same every measuring coffee tea paper sippy which what");

    /** Words before a spoon that has its number, or that is a thing, before them. */
    private static final Set<String> DESCRIBES = Words.set(
            "a an one another other heaped heaping level rounded scant generous good big small large little flat full "
                    + "extra last first second third final half quarter of with single whole wooden old proper "
                    + "measuring more few couple metric australian american english british regular standard");

    /** A gas oven has ten marks. Common practice, no source. */
    private static final RationalNumber HIGHEST_MARK = Rationals.of(10);

    private final WordStream words;
    private final NumberGrammar numbers;
    private final UnitTails tails;
    private final ArticledQuantities articled;
    private final NumberedQuantities numbered;
    private final UnitRanges ranges;
    private final SpokenOrdinals ordinals;

    /** @param own what the speaker measures with besides cups and spoons */
    QuantityGrammar(WordStream words, OwnMeasures own) {
        BetweenWords between = new BetweenWords(words);
        this.words = words;
        this.numbers = new NumberGrammar(words);
        this.tails = new UnitTails(words, numbers);
        LooseUnits loose = new LooseUnits(words, own);
        this.articled = new ArticledQuantities(words, between, tails, loose);
        this.numbered = new NumberedQuantities(words, numbers, between, tails, loose);
        this.ranges = new UnitRanges(words);
        this.ordinals = new SpokenOrdinals(words, own);
    }

    /** The quantity that begins at the index, if one does. */
    Optional<SpokenQuantity> at(int start) {
        return gasMark(start)
                .or(() -> belowZero(start))
                .or(() -> ordinals.at(start))
                .or(() -> counted(start))
                .or(() -> unitAlone(start))
                .map(low -> ranges.from(low, this::counted));
    }

    private Optional<SpokenQuantity> counted(int start) {
        return articled.at(start).or(() -> numbered.at(start));
    }

    /** "gas four", "gas mark 4", "mark four". */
    private Optional<SpokenQuantity> gasMark(int start) {
        int gas = words.text(start).equals("gas") ? start + 1 : start;
        int at = words.text(gas).equals("mark") ? gas + 1 : gas;
        return at == start
                ? Optional.empty()
                : mark(at).map(number -> SpokenQuantity.measured(start, number.end(), number.amount(), Unit.GAS_MARK));
    }

    /** "gas mark two, or a hundred and fifty" is no range: what comes second is another scale. */
    private Optional<SpokenNumber> mark(int at) {
        Optional<SpokenNumber> number = numbers.at(at);
        boolean tooHot = number.flatMap(found -> found.amount().most())
                .filter(most -> most.compareTo(HIGHEST_MARK) > 0)
                .isPresent();
        if (!tooHot) {
            return number;
        }
        int or = at;
        while (or < number.get().end() && !words.text(or).equals("or")) {
            or++;
        }
        return new NumberGrammar(words.until(or)).at(at);
    }

    /** "minus eighteen degrees": a freezer's, and no oven's. */
    private Optional<SpokenQuantity> belowZero(int start) {
        return words.text(start).equals("minus")
                ? numbered.at(start + 1)
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

    /** "vanilla. Teaspoon.", "and tablespoon of honey", "cup and a half of raisins": a unit without its article means one. */
    private Optional<SpokenQuantity> unitAlone(int start) {
        if (NO_ONE_MEANT.contains(words.text(start - 1)) && !words.wall(start)) {
            return Optional.empty();
        }
        return UnitWords.at(words, start)
                .filter(unit -> unit.unit().dimension() == Dimension.VOLUME
                        && words.text(start).equals(singular(start)))
                .flatMap(unit -> oneOf(start, unit));
    }

    private Optional<SpokenQuantity> oneOf(int start, UnitWords.Heard unit) {
        SpokenQuantity one = tails.with(start, Amount.of(1), unit);
        boolean alone = words.wall(start) && words.wall(unit.end());
        boolean begins = words.wall(start)
                || OPENERS.contains(words.text(start - 1))
                || (isSpoon(start) && !DESCRIBES.contains(words.text(start - 1)) && !isNumber(start - 1));
        boolean goesOn = (begins && words.text(unit.end()).equals("of")) || one.end() > unit.end();
        return Optional.of(one).filter(found -> alone || (goesOn && words.on(Mechanism.ARTICLE_LEFT_OUT)));
    }

    private boolean isSpoon(int at) {
        return words.text(at).equals("teaspoon") || words.text(at).equals("tablespoon");
    }

    private boolean isNumber(int at) {
        return NumberWords.isOne(words.text(at)) || NumberWords.part(words.text(at)) > 0;
    }

    private String singular(int at) {
        return Words.singular(words.text(at));
    }
}
