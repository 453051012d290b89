package org.misecue.prep;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One row of {@code cautions.yaml}; lists that the row leaves out are empty.
 *
 * @param always whether it holds on every filming day
 * @param ingredients pantry names it concerns
 * @param techniques technique keys it concerns
 * @param both whether ingredients and techniques must meet in one step, as sugar and boiling do
 * @param chilled whether it concerns everything that is kept in the fridge
 * @param except pantry names that "chilled" does not mean: butter may stand out for longer
 * @param allergens whether it concerns every bowl with an allergen
 * @param words what is done to an ingredient beforehand: "chopped"
 * @param brief a few words for a label
 */
record CautionRule(
        boolean always,
        List<String> ingredients,
        List<String> techniques,
        boolean both,
        boolean chilled,
        List<String> except,
        boolean allergens,
        List<String> words,
        String what,
        String brief,
        String source) {

    CautionRule {
        ingredients = orEmpty(ingredients);
        techniques = orEmpty(techniques);
        except = orEmpty(except);
        words = orEmpty(words);
    }

    private static List<String> orEmpty(@Nullable List<String> list) {
        return list == null ? List.of() : list;
    }
}
