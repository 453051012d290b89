package org.misecue.pantry;

import java.util.List;
import java.util.Set;

/**
 * What is known about one ingredient.
 *
 * @param name the usual British name, singular where it is counted
 * @param names other written names and spellings, of any English
 * @param heard what speech recognisers write for it besides
 * @param weights grams per measure, empty where none is known
 * @param allergens what it carries by nature
 * @param checkLabel what some makes of it carry: "check the label"
 * @param chilled whether it is kept in the fridge
 * @param aisle where a shop has it, such as "dairy" or "baking"
 */
public record Ingredient(
        String name,
        List<String> names,
        List<String> heard,
        List<Weight> weights,
        Set<Allergen> allergens,
        Set<Allergen> checkLabel,
        boolean chilled,
        String aisle) {}
