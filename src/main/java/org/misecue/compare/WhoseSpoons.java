package org.misecue.compare;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Phrases;
import org.misecue.spoken.Phrases.Kind;
import org.misecue.spoken.WordStream;
import tech.units.indriya.function.RationalNumber;

/**
 * Whose cups and spoons are meant. A tablespoon is one of 15 ml unless the speaker or the recipe tells that it is the
 * Australian one of 20 ml; that an amount would agree by the larger spoon tells nothing.
 */
final class WhoseSpoons {

    /** Told where an amount would agree by another spoon. */
    static final String OTHERS =
            "By the tablespoon of another country (15 ml in most, 20 ml in Australia) it would agree: listen whose it is.";

    private static final RationalNumber LARGE = Rationals.of(20);
    private static final int SPOON_REACH = 9;
    private static final int STRANGER_REACH = 7;

    private static final Set<String> ONES = Set.of("one", "ones");
    private static final Set<String> COPULAS = Set.of("is", "are");
    private static final Set<String> OWN = Set.of("my", "our");

    private final Recipe recipe;
    private final WordStream words;
    private final Phrases phrases;

    WhoseSpoons(Recipe recipe, WordStream words, Phrases phrases) {
        this.recipe = recipe;
        this.words = words;
        this.phrases = phrases;
    }

    /** Cups in the list mean an American kitchen; spoons are 5 and 15 ml in both. */
    Household household() {
        boolean american = recipe.lines().stream()
                .flatMap(line -> line.quantity().stream())
                .anyMatch(quantity -> quantity.unit() == Unit.CUP || quantity.unit() == Unit.STICK);
        if (words.on(Mechanism.NATIONAL_SPOONS) && (isWritten() || isTold())) {
            return Household.AUSTRALIAN;
        }
        return american ? Household.US_LABEL : Household.METRIC;
    }

    /** "2 tbsp (40 ml)". */
    private boolean isWritten() {
        return recipe.lines().stream().anyMatch(WhoseSpoons::isLarge);
    }

    private static boolean isLarge(IngredientLine line) {
        return spoons(line).isPresent() && spoons(line).map(LARGE::multiply).equals(in(line, Unit.MILLILITRE));
    }

    private static Optional<RationalNumber> spoons(IngredientLine line) {
        return in(line, Unit.TABLESPOON);
    }

    /** How many of a unit the line has, in either of its two figures. */
    private static Optional<RationalNumber> in(IngredientLine line, Unit unit) {
        return line.quantity()
                .filter(figure -> figure.unit() == unit)
                .or(() -> line.alternative().filter(figure -> figure.unit() == unit))
                .map(Quantity::amount)
                .flatMap(amount -> amount.least());
    }

    /** "my tablespoons are the twenty mil ones", "I'm using Aussie spoons", and not what is told of other people's. */
    private boolean isTold() {
        for (int at = 0; at < words.size(); at++) {
            OptionalInt end = phrases.endAt(Kind.LARGE_SPOON, at);
            if (end.isPresent() && isOfSpoons(at, end.getAsInt()) && !isOfStrangers(at)) {
                return true;
            }
        }
        return false;
    }

    /** "Aussie tablespoons"; "a tablespoon … the Australian one", "… is twenty mils"; "I'm an Aussie, so my tablespoons". */
    private boolean isOfSpoons(int start, int end) {
        boolean told = ONES.contains(words.text(end)) || COPULAS.contains(words.text(start - 1));
        return isSpoon(end) || (told && isSpoonWithin(start - SPOON_REACH, start)) || isOwnBehind(start, end);
    }

    private boolean isOwnBehind(int start, int end) {
        boolean speaker =
                words.text(start - 1).equals("i'm") || words.text(start - 2).equals("i'm");
        for (int at = end; speaker && at < end + SPOON_REACH; at++) {
            if (OWN.contains(words.text(at)) && isSpoon(at + 1)) {
                return true;
            }
        }
        return false;
    }

    private boolean isSpoonWithin(int from, int to) {
        return IntStream.range(from, to).anyMatch(this::isSpoon);
    }

    private boolean isSpoon(int at) {
        return words.text(at).startsWith("tablespoon") || words.text(at).startsWith("spoon");
    }

    /** "the twenty mil ones, not your fifteen mil ones": behind the "not" others are spoken of. */
    private int untilNot(int at) {
        return IntStream.range(at, at + STRANGER_REACH)
                .filter(not -> words.text(not).equals("not"))
                .findFirst()
                .orElse(at + STRANGER_REACH);
    }

    private boolean isOfStrangers(int at) {
        return phrases.within(Kind.OTHERS_MEASURE, at - STRANGER_REACH, at)
                || phrases.within(Kind.OTHERS_MEASURE, at, untilNot(at));
    }
}
