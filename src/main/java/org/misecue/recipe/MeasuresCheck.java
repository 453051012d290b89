package org.misecue.recipe;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Spread;
import org.misecue.pantry.Weighed;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Two amounts of one line that differ by more than a tenth. Volumes and pieces become weights through the pantry, with
 * the spread that kitchens' measures have; a cup may be a US, a metric or an imperial one, and the nearest counts.
 */
final class MeasuresCheck implements RecipeCheck {

    private static final RationalNumber LESS = Rationals.of(9, 10);
    private static final RationalNumber MORE = Rationals.of(11, 10);
    /** A cup of flakes or chips is as heavy as they are small, and nobody writes how small (common practice, no source). */
    private static final RationalNumber MUCH_LESS = Rationals.of(7, 10);

    private static final RationalNumber MUCH_MORE = Rationals.of(13, 10);
    private static final List<Household> HOUSEHOLDS =
            List.of(Household.US_CUSTOMARY, Household.METRIC, Household.IMPERIAL);

    private record Bounds(RationalNumber low, RationalNumber high, boolean pieces) {
        boolean meets(Bounds other) {
            boolean loose = pieces || other.pieces;
            return low.multiply(loose ? MUCH_LESS : LESS).compareTo(other.high) <= 0
                    && other.low.compareTo(high.multiply(loose ? MUCH_MORE : MORE)) <= 0;
        }
    }

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        return recipe.lines().stream()
                .filter(line -> disagrees(line, larder))
                .map(line -> new Note(Place.of(recipe.source(), line.line()), sentence(line, larder)))
                .toList();
    }

    private static boolean disagrees(IngredientLine line, Larder larder) {
        Optional<Quantity> first = line.quantity().filter(MeasuresCheck::isMeasured);
        Optional<Quantity> second = line.alternative().filter(MeasuresCheck::isMeasured);
        if (first.isEmpty() || second.isEmpty()) {
            return false;
        }
        List<Boolean> tries = HOUSEHOLDS.stream()
                .flatMap(household -> agree(line, first.get(), second.get(), household, larder).stream())
                .toList();
        return !tries.isEmpty() && tries.stream().noneMatch(agree -> agree);
    }

    private static Optional<Boolean> agree(
            IngredientLine line, Quantity one, Quantity other, Household household, Larder larder) {
        Optional<Bounds> here = bounds(line, one, other, household, larder);
        Optional<Bounds> there = bounds(line, other, one, household, larder);
        return here.flatMap(first -> there.map(first::meets));
    }

    /** Both as they are where they have one dimension, else both as weights. */
    private static Optional<Bounds> bounds(
            IngredientLine line, Quantity own, Quantity other, Household household, Larder larder) {
        if (own.dimension() == other.dimension()) {
            return own.leastInBase(household)
                    .flatMap(low -> own.mostInBase(household).map(high -> new Bounds(low, high, false)));
        }
        return known(line, larder).flatMap(ingredient -> Weighing.weighed(own, ingredient, household)
                .map(Weighed::spread)
                .map(spread -> new Bounds(
                        spread.low(), spread.high(), ingredient.kind().equals("chopped"))));
    }

    private static Optional<Ingredient> known(IngredientLine line, Larder larder) {
        return larder.heardAs(line.ingredient()); // a near name may fill a cup quite differently
    }

    private static boolean isMeasured(Quantity quantity) {
        return quantity.amount().least().isPresent()
                && Stream.of(Dimension.MASS, Dimension.VOLUME, Dimension.COUNT)
                        .anyMatch(each -> each == quantity.dimension());
    }

    private static String sentence(IngredientLine line, Larder larder) {
        Quantity first = line.quantity().orElseThrow();
        Quantity second = line.alternative().orElseThrow();
        String weighed = first.dimension() == second.dimension() ? "" : weighed(line, first, second, larder);
        return "%s and %s of %s differ by more than a tenth%s; check which of them is meant."
                .formatted(QuantityWriter.text(first), QuantityWriter.text(second), line.ingredient(), weighed);
    }

    /** What the one that is no weight weighs: " (2 cups weigh about 200–290 g)". */
    private static String weighed(IngredientLine line, Quantity first, Quantity second, Larder larder) {
        Quantity measure = first.dimension() == Dimension.MASS ? second : first;
        return known(line, larder)
                .flatMap(ingredient -> Weighing.weighed(measure, ingredient, Household.US_CUSTOMARY))
                .map(Weighed::spread)
                .map(spread -> " (%s: %s g)".formatted(QuantityWriter.text(measure), text(spread)))
                .orElse("");
    }

    private static String text(Spread spread) {
        String low = Rationals.rounded(spread.low(), 0).toPlainString();
        String high = Rationals.rounded(spread.high(), 0).toPlainString();
        return low.equals(high) ? "about " + low : "about " + low + "–" + high;
    }
}
