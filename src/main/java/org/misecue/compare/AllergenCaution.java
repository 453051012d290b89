package org.misecue.compare;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.pantry.Allergen;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.IngredientLine;

/**
 * What to tell viewers where the amount of an allergenic ingredient is in question, or where one was added that the recipe
 * does not list. The allergens are those of Annex II to Regulation (EU) 1169/2011, by what the ingredient usually is. That
 * none is named never means that there is none.
 */
final class AllergenCaution {

    /** Stands under a report that has cautions. */
    static final String SOURCE =
            "Allergens: the fourteen of Annex II to Regulation (EU) 1169/2011, by what the ingredient usually is. "
                    + "Where none is named, none is known here, which is not to say that there is none.";

    private static final String LAW = ": say so in the description; the label and local food law decide.";

    private final Pantry pantry;

    AllergenCaution(Pantry pantry) {
        this.pantry = pantry;
    }

    /** Of the line's ingredient and of those that it offers instead; empty where none of them is known to have any. */
    String of(IngredientLine line) {
        return of(Stream.concat(Stream.of(line.ingredient()), line.alternatives().stream())
                .map(pantry::find)
                .flatMap(Optional::stream)
                .toList());
    }

    /** An addition is on no list yet, so that one which the pantry does not know is pointed out too. */
    String ofAdded(String name) {
        Optional<Ingredient> known = pantry.find(name).or(() -> pantry.heardAs(name));
        return known.isEmpty() ? "Not known here; check the label for allergens" + LAW : of(List.of(known.get()));
    }

    private static String of(List<Ingredient> ingredients) {
        Set<Allergen> contains = new TreeSet<>();
        Set<Allergen> check = new TreeSet<>();
        ingredients.forEach(ingredient -> {
            contains.addAll(ingredient.allergens());
            check.addAll(ingredient.checkLabel());
        });
        check.removeAll(contains);
        String certain = contains.isEmpty() ? "" : "contains " + words(contains);
        String possible = check.isEmpty() ? "" : "check the label for " + words(check);
        String both =
                Stream.of(certain, possible).filter(words -> !words.isEmpty()).collect(Collectors.joining("; "));
        return both.isEmpty() ? "" : both.substring(0, 1).toUpperCase(Locale.ROOT) + both.substring(1) + LAW;
    }

    private static String words(Set<Allergen> allergens) {
        return allergens.stream().map(Allergen::label).collect(Collectors.joining(", "));
    }
}
