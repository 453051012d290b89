package org.misecue.recipe;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;

/** The names of a pantry in the form in which steps are searched for them, worked out once for each pantry. */
final class PantryPhrases {

    private record Called(String name, List<String> names) {}

    private final Map<Called, Set<String>> phrases = new ConcurrentHashMap<>();

    static PantryPhrases of(Pantry pantry) {
        return pantry.keeps(PantryPhrases.class, PantryPhrases::new);
    }

    /** Every name of an ingredient, the first one first. */
    Set<String> of(Ingredient ingredient) {
        return phrases.computeIfAbsent(new Called(ingredient.name(), ingredient.names()), PantryPhrases::phrases);
    }

    private static Set<String> phrases(Called ingredient) {
        return Stream.concat(Stream.of(ingredient.name), ingredient.names.stream())
                .map(Words::phrase)
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    }
}
