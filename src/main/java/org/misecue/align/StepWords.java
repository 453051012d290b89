package org.misecue.align;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.spoken.Words;

/** The words by which each step of a recipe is known: its own, and those by which such work is spoken of. */
final class StepWords {

    /** What a word is worth that stands in one step only. */
    private static final double WORD = 2.5;

    /** A word of the title is said of the whole dish, most often before the method begins. */
    private static final double TITLE = 1.25;

    private static final double[] NOTHING = {};

    private final int steps;
    private final Map<String, double[]> worth = new HashMap<>();

    StepWords(Recipe recipe, StepLines lines) {
        this.steps = recipe.steps().size();
        List<Set<String>> ofStep = recipe.steps().stream().map(StepWords::of).toList();
        Map<String, Integer> having = new HashMap<>();
        ofStep.forEach(words -> words.forEach(word -> having.merge(word, 1, Integer::sum)));
        for (int step = 1; step <= steps; step++) {
            for (String word : ofStep.get(step - 1)) {
                add(word, step, WORD / having.getOrDefault(word, 1));
            }
        }
        for (int component = 0; component < recipe.components().size(); component++) {
            Set<String> name = stems(recipe.components().get(component).name());
            lines.firstAbout(component).ifPresent(step -> name.forEach(word -> add(word, step, WORD)));
        }
        stems(recipe.title()).forEach(word -> add(word, 0, TITLE));
    }

    private static Set<String> of(Step step) {
        Set<String> words = stems(step.text());
        words.addAll(TechniqueTalk.of(step));
        return words;
    }

    private static Set<String> stems(String text) {
        Set<String> stems = new HashSet<>();
        Words.content(text).forEach(word -> stems.add(Stem.of(word)));
        return stems;
    }

    private void add(String stem, int step, double value) {
        worth.computeIfAbsent(stem, any -> new double[steps + 1])[step] += value;
    }

    /** What the word is worth for each step, index 0 being "before the method"; empty where it tells nothing. */
    double[] worth(String stem) {
        return worth.getOrDefault(stem, NOTHING);
    }
}
