package org.misecue.scale;

import java.util.Optional;
import org.misecue.quantity.Quantity;
import org.misecue.recipe.IngredientLine;
import tech.units.indriya.function.RationalNumber;

/**
 * One ingredient line as it is weighed for the batch.
 *
 * @param component the name of its component
 * @param written the line of the recipe, unscaled
 * @param exact the scaled quantity before rounding; empty where the line states none
 * @param weighed the quantity to weigh out: rounded to the scale's resolution, to spoons or to whole eggs
 * @param grams the weight of what is weighed out, of a range its upper end; exact for masses, through the pantry for
 *     measures and pieces; empty where unknown
 * @param error how far what is weighed lies from the exact amount, as a share of it; above zero for too much, 0 where
 *     nothing was rounded; empty where no amount is stated
 */
public record WeighedLine(
        String component,
        IngredientLine written,
        Optional<Quantity> exact,
        Optional<Quantity> weighed,
        Optional<RationalNumber> grams,
        Optional<RationalNumber> error) {

    /** The same line weighed out so often. */
    public WeighedLine times(RationalNumber times) {
        return new WeighedLine(
                component,
                written,
                exact.map(quantity -> quantity.times(times)),
                weighed.map(quantity -> quantity.times(times)),
                grams.map(weight -> weight.multiply(times)),
                error);
    }

    /** Whether what is weighed is not the exact amount. */
    public boolean isRounded() {
        return error.filter(off -> off.signum() != 0).isPresent();
    }
}
