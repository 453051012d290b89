package org.misecue.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.align.Aligner;
import org.misecue.align.Alignment;
import org.misecue.narration.Narration;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.quantity.MeasureSystem;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.NameListener;
import org.misecue.spoken.Phrases;
import org.misecue.spoken.QuantityListener;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Token;
import org.misecue.spoken.WordStream;

/** All that was heard of one episode, side by side with its recipe: what the rules of this package look at. */
final class Hearing {

    final Recipe recipe;
    final WordStream words;
    final Phrases phrases;
    final List<SpokenQuantity> quantities;
    final List<NameHit> names;
    final Alignment alignment;
    final List<IngredientLine> lines;
    final List<Integer> componentOfLine = new ArrayList<>();
    final List<Optional<Ingredient>> ingredientOfLine = new ArrayList<>();
    final Household household;
    private final List<Set<Integer>> linesOfStep = new ArrayList<>();

    Hearing(Recipe recipe, List<Narration> narrations, Pantry pantry) {
        this.recipe = recipe;
        this.words = WordStream.of(narrations);
        this.phrases = new Phrases(words);
        this.quantities = new QuantityListener(words).all();
        this.names = new NameListener(words, recipe, pantry).all();
        this.alignment = Aligner.align(recipe, words, names);
        this.lines = recipe.lines();
        for (int c = 0; c < recipe.components().size(); c++) {
            for (IngredientLine line : recipe.components().get(c).lines()) {
                componentOfLine.add(c);
                ingredientOfLine.add(pantry.find(line.ingredient()));
            }
        }
        this.household = householdOf(recipe);
        recipe.steps()
                .forEach(step -> linesOfStep.add(new HashSet<>(step.uses().stream()
                        .map(use -> firstLine(use.component()) + use.line())
                        .toList())));
    }

    /** Cups and degrees Fahrenheit in the list mean an American kitchen; spoons are 5 and 15 ml in both. */
    private static Household householdOf(Recipe recipe) {
        boolean american = recipe.lines().stream()
                .flatMap(line -> line.quantity().stream())
                .anyMatch(quantity -> quantity.unit() == Unit.CUP || quantity.unit() == Unit.STICK);
        return american ? Household.US_LABEL : Household.METRIC;
    }

    private int firstLine(int component) {
        return recipe.components().subList(0, component).stream()
                .mapToInt(c -> c.lines().size())
                .sum();
    }

    int stepAt(int index) {
        Token token = words.at(Math.min(index, words.size() - 1));
        return alignment.stepAt(token.source(), token.at());
    }

    boolean stepUses(int step, int line) {
        return step > 0 && linesOfStep.get(step - 1).contains(line);
    }

    /** Whether the step that is on uses anything of the component. */
    boolean stepIn(int step, int component) {
        return step > 0 && linesOfStep.get(step - 1).stream().anyMatch(line -> componentOfLine.get(line) == component);
    }

    boolean sameSource(int one, int other) {
        return words.at(one).source().equals(words.at(other).source());
    }

    Evidence evidence(int start, int end, Optional<Quantity> quantity) {
        return new Evidence(
                Evidence.Via.SPOKEN, words.moment(start), quantity, words.quote(start, end), words.words(start, end));
    }

    /** Whether two units belong to one family of measures, spoons belonging to all. */
    static boolean sameSystem(Unit one, Unit other) {
        return one.system() == other.system()
                ? one.system() != MeasureSystem.HOUSEHOLD || one == other || one.dimension() == other.dimension()
                : (one.system() == MeasureSystem.SHARED || other.system() == MeasureSystem.SHARED)
                        && one.system() != MeasureSystem.HOUSEHOLD
                        && other.system() != MeasureSystem.HOUSEHOLD;
    }
}
