package org.misecue.spoken;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;

/** Names that the pantry knows; they may be the recipe's ingredients in another English, or none of its own. */
final class PantryNameFinder {

    private static final int LONGEST_NAME = 5;

    private final WordStream words;
    private final Pantry pantry;
    private final RecipeNames recipe;
    private final Map<String, Optional<Ingredient>> looked = new HashMap<>();

    PantryNameFinder(WordStream words, Pantry pantry, RecipeNames recipe) {
        this.words = words;
        this.pantry = pantry;
        this.recipe = recipe;
    }

    /** The longest name that begins at the index, if one does. */
    Optional<NameHit> at(int start) {
        String first = words.text(start);
        if (first.isEmpty() || !pantry.mayBegin(first, first + words.text(start + 1))) {
            return Optional.empty();
        }
        for (int length = LONGEST_NAME; length >= 1; length--) {
            int end = start + length;
            boolean leans = length == 1 && LeaningWords.has(Words.singular(first));
            Optional<Ingredient> known = leans || !isName(start, end) ? Optional.empty() : known(start, end);
            if (known.isPresent()) {
                return Optional.of(name(start, end, known.get()));
            }
        }
        return Optional.empty();
    }

    private NameHit name(int start, int end, Ingredient known) {
        String said = words.normal(start, end);
        Set<Integer> lines = recipe.of(known);
        String name = pantry.heardAs(said).isPresent() ? said : known.name();
        return new NameHit(start, end, lines.isEmpty() ? recipe.writing(said) : lines, name);
    }

    /** The pantry overlooks numbers in a name; here a number before or after it is somebody's amount. */
    private boolean isName(int start, int end) {
        return end <= words.size()
                && Character.isLetter(words.text(start).charAt(0))
                && Character.isLetter(words.text(end - 1).charAt(0));
    }

    private Optional<Ingredient> known(int start, int end) {
        String name = words.normal(start, end);
        int space = name.indexOf(' ');
        Optional<Ingredient> known = looked.computeIfAbsent(name, pantry::heardAs);
        if (known.isPresent() || space < 0) {
            return known;
        }
        String joined = name.substring(0, space) + name.substring(space + 1);
        return looked.computeIfAbsent(joined, pantry::heardAs);
    }
}
