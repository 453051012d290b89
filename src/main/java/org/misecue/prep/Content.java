package org.misecue.prep;

import java.util.Optional;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.IngredientLine;
import org.misecue.scale.WeighedLine;
import tech.units.indriya.function.RationalNumber;

/**
 * One ingredient in a bowl.
 *
 * @param line the line of the recipe it comes from, as written
 * @param weighed how much of it goes into this bowl
 * @param grams its weight; empty where the pantry does not know it
 */
public record Content(IngredientLine line, Quantity weighed, Optional<RationalNumber> grams) {

    /** As a line of its own, for what is bought. */
    WeighedLine asLine() {
        return new WeighedLine(
                "", line, Optional.of(weighed), Optional.of(weighed), grams, Optional.of(Rationals.ZERO));
    }

    public String ingredient() {
        return line.ingredient();
    }

    public String preparation() {
        return line.preparation();
    }

    /** The ingredient with what the recipe says about choice: "sultanas or raisins (optional)". */
    public String label() {
        String choice = line.alternatives().isEmpty() ? "" : " or " + String.join(" or ", line.alternatives());
        return line.ingredient() + choice + (line.optional() ? " (optional)" : "");
    }
}
