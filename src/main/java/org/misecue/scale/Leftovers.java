package org.misecue.scale;

import java.util.List;
import java.util.Optional;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import tech.units.indriya.function.RationalNumber;

/** How many batches are in what is left of one ingredient, over all the lines that use it. */
final class Leftovers {

    private Leftovers() {}

    static RationalNumber factor(Recipe recipe, Batch.Left batch, Household household, Pantry pantry) {
        Quantity left = batch.left();
        List<Quantity> used = recipe.lines().stream()
                .filter(line -> same(line, batch.ingredient(), pantry))
                .flatMap(line -> line.quantity().stream())
                .filter(quantity -> quantity.dimension() != Dimension.SMIDGEN)
                .toList();
        RationalNumber sum = Rationals.ZERO;
        for (Quantity quantity : used) {
            if (quantity.dimension() != left.dimension()) {
                throw new BadInput(
                        Place.of(recipe.source()),
                        "the recipe measures %s as %s, so say what is left of it in the same kind of measure, not %s."
                                .formatted(
                                        batch.ingredient(), QuantityWriter.text(quantity), QuantityWriter.text(left)));
            }
            sum = sum.add(quantity.mostInBase(household).orElse(Rationals.ZERO));
        }
        if (sum.signum() <= 0) {
            throw new BadInput(
                    Place.of(recipe.source()),
                    "no ingredient line states an amount of %s; name an ingredient as the recipe does."
                            .formatted(batch.ingredient()));
        }
        return left.leastInBase(household).orElseThrow().divide(sum);
    }

    private static boolean same(IngredientLine line, String name, Pantry pantry) {
        Optional<Ingredient> known = pantry.find(name);
        return line.ingredient().equalsIgnoreCase(name)
                || known.isPresent() && pantry.find(line.ingredient()).equals(known);
    }
}
