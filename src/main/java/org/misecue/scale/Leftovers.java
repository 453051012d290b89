package org.misecue.scale;

import java.util.List;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import tech.units.indriya.function.RationalNumber;

/**
 * How many batches are in what is left of one ingredient, over all the lines that use it.
 *
 * @param factor above zero
 * @param notes that weights of the pantry came in, where they did
 */
record Leftovers(RationalNumber factor, List<Note> notes) {

    /** @throws BadInput if no line uses it, or it is measured in a way that nothing turns into the recipe's */
    static Leftovers of(Recipe recipe, Batch.Left batch, Household household, Pantry pantry) {
        Place place = Place.of(recipe.source());
        Quantity left = batch.left();
        Optional<Ingredient> known = pantry.find(batch.ingredient());
        List<Quantity> used = recipe.lines().stream()
                .filter(line -> isSame(line, batch.ingredient(), known, pantry))
                .flatMap(line -> line.quantity().stream())
                .filter(quantity -> quantity.dimension() != Dimension.SMIDGEN)
                .toList();
        if (used.stream().allMatch(quantity -> quantity.mostInBase(household)
                .filter(value -> value.signum() > 0)
                .isEmpty())) {
            throw new BadInput(
                    place,
                    "no ingredient line states an amount of %s; name an ingredient as the recipe does."
                            .formatted(batch.ingredient()));
        }
        boolean alike = used.stream().allMatch(quantity -> quantity.dimension() == left.dimension());
        if (alike) {
            RationalNumber sum = used.stream()
                    .map(quantity -> quantity.mostInBase(household).orElse(Rationals.ZERO))
                    .reduce(Rationals.ZERO, RationalNumber::add);
            return new Leftovers(left.leastInBase(household).orElseThrow().divide(sum), List.of());
        }
        RationalNumber sum = used.stream()
                .map(quantity -> grams(quantity, batch, known, household, place))
                .reduce(Rationals.ZERO, RationalNumber::add);
        RationalNumber have = grams(left, batch, known, household, place);
        return new Leftovers(
                have.divide(sum),
                List.of(new Note(
                        place,
                        "%s of %s is taken as about %s g, for the recipe measures it otherwise; weigh it to be sure."
                                .formatted(
                                        QuantityWriter.text(left),
                                        batch.ingredient(),
                                        Rationals.rounded(have, 0).toPlainString()))));
    }

    private static RationalNumber grams(
            Quantity quantity, Batch.Left batch, Optional<Ingredient> known, Household household, Place place) {
        return known.flatMap(ingredient -> Weighing.grams(quantity, ingredient, household))
                .filter(grams -> grams.signum() > 0)
                .orElseThrow(() -> new BadInput(
                        place,
                        "%s of %s has no known weight, so say what is left of it in the same kind of measure as the recipe does."
                                .formatted(QuantityWriter.text(quantity), batch.ingredient())));
    }

    private static boolean isSame(IngredientLine line, String name, Optional<Ingredient> known, Pantry pantry) {
        return line.ingredient().equalsIgnoreCase(name)
                || known.isPresent() && pantry.find(line.ingredient()).equals(known);
    }
}
