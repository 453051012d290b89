package org.misecue.spoken;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;

/**
 * Finds ingredients named in the stream: by the recipe's own words, by the pantry's names in other Englishes, and by
 * words that sound like the recipe's.
 */
public final class NameListener {

    private static final Set<String> UNIT_SIGNS = Words.set("g kg mg ml cl dl l oz lb tsp tbsp c f");

    private final WordStream words;
    private final RecipeNameFinder own;
    private final PantryNameFinder known;

    public NameListener(WordStream words, Recipe recipe, Pantry pantry) {
        this.words = words;
        RecipeNames names = new RecipeNames(recipe, pantry, words.on(Mechanism.SYNONYMS));
        this.own = new RecipeNameFinder(words, pantry, names);
        this.known = new PantryNameFinder(words, pantry, names);
    }

    /** In the order of the stream; none overlap. */
    private static final Set<String> TEA_THINGS =
            Words.set("spoon spoons towel towels cloth cosy cozy room rooms time urn tray pot");

    public List<NameHit> all() {
        List<NameHit> hits = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            Optional<NameHit> hit = at(at);
            hit.ifPresent(hits::add);
            hit.ifPresent(own::named);
            at = hit.map(NameHit::end).orElse(at + 1);
        }
        return List.copyOf(hits);
    }

    /** The longer name; of two that are as long the one by the recipe's own words. */
    private Optional<NameHit> at(int start) {
        if (isUnitSign(start)) {
            return Optional.empty();
        }
        // "Two is all it wants" names no all-purpose flour.
        Optional<NameHit> byRecipe = own.at(start).filter(name -> !name.name().equals("all"));
        Optional<NameHit> byPantry = words.on(Mechanism.SYNONYMS) ? known.at(start) : Optional.empty();
        boolean longer = byPantry.isPresent()
                && byRecipe.filter(name -> name.end() >= byPantry.get().end()).isEmpty();
        return (longer ? byPantry : byRecipe).filter(name -> !isTeaThing(name));
    }

    /** "a tea towel", "the tea urn": no tea. */
    private boolean isTeaThing(NameHit name) {
        return name.name().equals("tea") && TEA_THINGS.contains(words.text(name.end()));
    }

    /** The "g" of "100 g ground hazelnuts", which is no piece of a word. */
    private boolean isUnitSign(int start) {
        String before = words.text(start - 1);
        return UNIT_SIGNS.contains(words.text(start))
                && !before.isEmpty()
                && !Character.isLetter(before.charAt(before.length() - 1));
    }
}
