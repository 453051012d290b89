package org.misecue.recipe;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;

/** The pantry while one recipe is read: what was asked once about a name is not looked up again. */
final class Larder {

    /** In letters. Common practice, no source. */
    private static final int LONGEST_NAME = 500;

    private final Pantry pantry;
    private final Map<String, Optional<Ingredient>> found = new HashMap<>();
    private final Map<String, Optional<Ingredient>> heard = new HashMap<>();
    private final Map<String, Wording> wordings = new HashMap<>();
    private final Map<String, IngredientNames> called = new HashMap<>();

    Larder(Pantry pantry) {
        this.pantry = pantry;
    }

    Pantry pantry() {
        return pantry;
    }

    /** As {@link Pantry#find} has it; nothing where the name is longer than names are, as in a line that never ends. */
    Optional<Ingredient> find(String name) {
        return name.length() > LONGEST_NAME ? Optional.empty() : found.computeIfAbsent(name, pantry::find);
    }

    /** As {@link Pantry#heardAs} has it. */
    Optional<Ingredient> heardAs(String words) {
        return heard.computeIfAbsent(words, pantry::heardAs);
    }

    /** A name or a step as patterns are asked about it. */
    Wording wording(String text) {
        return wordings.computeIfAbsent(text, Wording::of);
    }

    /** By what a method may call an ingredient. */
    IngredientNames called(String ingredient) {
        return called.computeIfAbsent(ingredient, name -> IngredientNames.of(name, this));
    }
}
