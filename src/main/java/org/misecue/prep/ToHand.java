package org.misecue.prep;

import java.util.List;
import org.misecue.recipe.IngredientLine;

/**
 * An ingredient that the recipe lists without an amount: "butter, for greasing". It stands within reach and is not
 * weighed.
 *
 * @param steps where it is used; empty where no step names it
 */
public record ToHand(String component, IngredientLine line, List<Integer> steps, Carries allergens) {}
