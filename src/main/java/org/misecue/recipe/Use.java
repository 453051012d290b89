package org.misecue.recipe;

import java.util.Optional;
import org.misecue.quantity.Quantity;

/**
 * An ingredient line used by a step.
 *
 * @param component the index of the component in the recipe, from 0
 * @param line the index of the line in the component, from 0
 * @param part how much of it where the step says so: the 2 tbsp of "2 tbsp of the milk"
 * @param words what the step says of the share: "half", "the rest"; empty for all of it
 */
public record Use(int component, int line, Optional<Quantity> part, String words) {

    /** The words of a share that is put by for a later step. */
    public static final String SET_ASIDE = "set aside";

    /** The words of a use that takes what an earlier step put by. */
    public static final String RESERVED = "reserved";

    public IngredientLine in(Recipe recipe) {
        return recipe.components().get(component).lines().get(line);
    }
}
