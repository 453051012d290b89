package org.misecue.spoken;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** A number and its unit, or what else may follow it: "two level tablespoons", "half a cup", "180 c", "sixty percent". */
final class NumberedQuantities {

    /** No oven is set lower. Common practice, no source. */
    private static final RationalNumber COOLEST_OVEN = Rationals.of(90);

    private static final Map<String, Unit> SCALES =
            Map.of("celsius", Unit.CELSIUS, "centigrade", Unit.CELSIUS, "fahrenheit", Unit.FAHRENHEIT);

    /** Behind these words somebody pinches something. */
    private static final Set<String> PINCHED =
            Words.set("them it these those the that your my each all every round around along together shut closed up");

    private final WordStream words;
    private final NumberGrammar numbers;
    private final BetweenWords between;
    private final UnitTails tails;
    private final LooseUnits loose;

    NumberedQuantities(
            WordStream words, NumberGrammar numbers, BetweenWords between, UnitTails tails, LooseUnits loose) {
        this.words = words;
        this.numbers = numbers;
        this.between = between;
        this.tails = tails;
        this.loose = loose;
    }

    Optional<SpokenQuantity> at(int start) {
        if (isPinch(start)) {
            return Optional.of(SpokenQuantity.measured(start, start + 1, Amount.of(1), Unit.PINCH));
        }
        return numbers.at(start).map(number -> percent(number)
                .or(() -> partOfPart(number))
                .or(() -> measured(number))
                .or(() -> degrees(number))
                .or(() -> lettered(number))
                .or(() -> ones(number))
                .orElseGet(() -> alone(number)));
    }

    /** "pinches of salt", not "pinch them shut". */
    private boolean isPinch(int start) {
        boolean pinch = words.text(start).equals("pinch") || words.text(start).equals("pinches");
        return pinch && !PINCHED.contains(words.text(start + 1));
    }

    private Optional<SpokenQuantity> percent(SpokenNumber number) {
        String next = words.text(number.end());
        boolean two = next.equals("per") && words.text(number.end() + 1).equals("cent");
        if (!two && !next.equals("percent") && !next.equals("%")) {
            return Optional.empty();
        }
        Amount share = number.amount().times(Rationals.of(1, 100));
        return Optional.of(SpokenQuantity.of(number.start(), number.end() + (two ? 2 : 1), share, Manner.PERCENT));
    }

    /** "half of a half teaspoon". */
    private Optional<SpokenQuantity> partOfPart(SpokenNumber number) {
        if (!number.fraction() || !words.text(number.end()).equals("of")) {
            return Optional.empty();
        }
        int inner = words.text(number.end() + 1).equals("a") ? number.end() + 2 : number.end() + 1;
        return numbers.at(inner).filter(SpokenNumber::fraction).flatMap(part -> UnitWords.at(
                        words, between.afterSizes(between.afterPartOf(part.end())))
                .flatMap(unit -> part.amount()
                        .least()
                        .map(share -> SpokenQuantity.measured(
                                number.start(), unit.end(), number.amount().times(share), unit.unit()))));
    }

    /** With a unit, or what stands for one. */
    private Optional<SpokenQuantity> measured(SpokenNumber number) {
        int end = number.end();
        int at = between.afterSizes(isPart(number) ? between.afterPartOf(end) : between.afterOdd(end));
        return UnitWords.at(words, at)
                .map(unit -> tails.with(number.start(), number.amount(), unit))
                .or(() -> loose.at(number.start(), at, number.amount()));
    }

    private static boolean isPart(SpokenNumber number) {
        return number.fraction() || number.amount().most().orElse(Rationals.ONE).compareTo(Rationals.ONE) < 0;
    }

    /** Of no stated scale. */
    private Optional<SpokenQuantity> degrees(SpokenNumber number) {
        return words.text(number.end()).startsWith("degree")
                ? Optional.of(SpokenQuantity.of(number.start(), number.end() + 1, number.amount(), Manner.HEAT))
                : Optional.empty();
    }

    /** "180 c", "350 f", "175 in celsius": a letter is a scale only after a number that an oven could have. */
    private Optional<SpokenQuantity> lettered(SpokenNumber number) {
        String next = words.text(number.end());
        if (next.equals("in") && SCALES.containsKey(words.text(number.end() + 1)) && isOvenLike(number)) {
            Unit told = SCALES.getOrDefault(words.text(number.end() + 1), Unit.CELSIUS);
            return Optional.of(SpokenQuantity.measured(number.start(), number.end() + 2, number.amount(), told));
        }
        boolean letter = next.equals("c") || next.equals("f");
        Unit scale = next.equals("c") ? Unit.CELSIUS : Unit.FAHRENHEIT;
        return letter && isOvenLike(number)
                ? Optional.of(SpokenQuantity.measured(number.start(), number.end() + 1, number.amount(), scale))
                : Optional.empty();
    }

    private static boolean isOvenLike(SpokenNumber number) {
        return number.amount().least().orElse(Rationals.ZERO).compareTo(COOLEST_OVEN) >= 0;
    }

    /** "two large ones", "one level one". */
    private Optional<SpokenQuantity> ones(SpokenNumber number) {
        int at = between.afterSizes(number.end());
        boolean ones = at > number.end()
                && (words.text(at).equals("one") || words.text(at).equals("ones"));
        return ones
                ? Optional.of(SpokenQuantity.of(number.start(), at + 1, number.amount(), Manner.BARE))
                : Optional.empty();
    }

    /** A share, a heat that only "fan" tells ("160 fan"), or a bare number. */
    private SpokenQuantity alone(SpokenNumber number) {
        boolean fan = words.text(number.end()).equals("fan") && isOvenLike(number);
        Manner manner = number.fraction() ? Manner.SHARE : fan ? Manner.HEAT : Manner.BARE;
        return SpokenQuantity.of(number.start(), between.afterOdd(number.end()), number.amount(), manner);
    }
}
