package org.misecue.align;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.recipe.Use;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Places;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** The words and ingredients by which each step of a recipe is known, rarer ones telling more. */
final class StepWords {

    /** What naming an ingredient is worth against a word of the method: it is most of what a step is about. */
    private static final double INGREDIENT_WEIGHT = 1.6;

    private final int steps;
    private final List<Set<String>> wordsOfStep = new ArrayList<>();
    private final List<Set<Integer>> linesOfStep = new ArrayList<>();
    private final Map<String, Integer> stepsWithWord = new HashMap<>();

    StepWords(Recipe recipe) {
        this.steps = recipe.steps().size();
        for (Step step : recipe.steps()) {
            Set<String> content = new HashSet<>();
            for (String word : Words.content(step.text())) {
                content.add(Stem.of(word));
            }
            wordsOfStep.add(content);
            content.forEach(word -> stepsWithWord.merge(word, 1, Integer::sum));
            linesOfStep.add(linesOf(recipe, step));
        }
    }

    private static Set<Integer> linesOf(Recipe recipe, Step step) {
        Set<Integer> lines = new HashSet<>();
        for (Use use : step.uses()) {
            int before = 0;
            for (int c = 0; c < use.component(); c++) {
                before += recipe.components().get(c).lines().size();
            }
            lines.add(before + use.line());
        }
        return lines;
    }

    /** How much {@code [start, end)} speaks for each step; index 0 is "before the method", which nothing speaks for. */
    double[] support(WordStream words, Places<NameHit> names, int start, int end) {
        double[] support = new double[steps + 1];
        Set<String> seen = new HashSet<>();
        for (int at = start; at < end; at++) {
            String word = Stem.of(words.text(at));
            Integer having = stepsWithWord.get(word);
            if (having != null && seen.add(word)) {
                addWord(support, word, 1.0 / having);
            }
        }
        names.in(start, end).stream().filter(NameHit::inRecipe).forEach(name -> addName(support, name));
        return support;
    }

    private void addWord(double[] support, String word, double weight) {
        for (int step = 0; step < steps; step++) {
            if (wordsOfStep.get(step).contains(word)) {
                support[step + 1] += weight;
            }
        }
    }

    private void addName(double[] support, NameHit name) {
        List<Integer> using = new ArrayList<>();
        for (int step = 0; step < steps; step++) {
            if (linesOfStep.get(step).stream().anyMatch(name.lines()::contains)) {
                using.add(step);
            }
        }
        for (int step : using) {
            support[step + 1] += INGREDIENT_WEIGHT / using.size();
        }
    }
}
