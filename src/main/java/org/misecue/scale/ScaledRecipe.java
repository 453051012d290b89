package org.misecue.scale;

import java.util.List;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Recipe;
import tech.units.indriya.function.RationalNumber;

/**
 * A recipe for one batch size.
 *
 * @param recipe as written
 * @param factor more than zero; 1 for the written batch
 * @param lines in recipe order, one for each ingredient line
 * @param warnings what had to be rounded hard, or does not scale
 */
public record ScaledRecipe(Recipe recipe, RationalNumber factor, List<WeighedLine> lines, List<Note> warnings) {

    /** The line that rounding puts furthest off its exact amount; empty where nothing is rounded. */
    public Optional<WeighedLine> furthestOff() {
        return lines.stream().filter(WeighedLine::isRounded).max((one, other) -> off(one).compareTo(off(other)));
    }

    private static RationalNumber off(WeighedLine line) {
        return line.error().map(RationalNumber::abs).orElse(Rationals.ZERO);
    }

    ScaledRecipe warning(List<Note> notes) {
        return new ScaledRecipe(recipe, factor, lines, List.copyOf(notes));
    }

    /** The same batch with its lines measured otherwise. */
    ScaledRecipe with(List<WeighedLine> other) {
        return new ScaledRecipe(recipe, factor, List.copyOf(other), warnings);
    }

    /**
     * The baker's percentage of a line: its exact weight as a share of all flour in its part of the dish. Empty where a
     * weight is unknown or the part has no flour. Only what is written in grams or other weights counts, so that the
     * shares are exact and the same at every size.
     */
    public Optional<RationalNumber> share(WeighedLine line) {
        RationalNumber flour = lines.stream()
                .filter(each -> each.component().equals(line.component()) && isFlour(each))
                .flatMap(each -> grams(each).stream())
                .reduce(Rationals.ZERO, RationalNumber::add);
        return flour.signum() == 0 ? Optional.empty() : grams(line).map(grams -> grams.divide(flour));
    }

    private static boolean isFlour(WeighedLine line) {
        return line.written().ingredient().matches("(?i).*\\b(?:flours?|maida|atta)");
    }

    private static Optional<RationalNumber> grams(WeighedLine line) {
        return line.exact()
                .filter(quantity -> quantity.dimension() == Dimension.MASS)
                .flatMap(quantity -> quantity.mostInBase(Household.METRIC));
    }
}
