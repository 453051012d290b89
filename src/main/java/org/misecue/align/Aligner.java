package org.misecue.align;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.misecue.narration.Narration;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.NameListener;
import org.misecue.spoken.QuantityListener;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.Token;
import org.misecue.spoken.WordStream;

/**
 * Finds the step that is on at each moment: words, ingredients, amounts and times speak for the steps that have them, and
 * the likeliest walk through the steps is taken, mostly forward.
 */
public final class Aligner {

    /** Words of the shortest visit to a step. */
    private static final int SHORTEST = 8;

    private Aligner() {}

    public static Alignment align(Recipe recipe, List<Narration> narrations, Pantry pantry) {
        WordStream words = WordStream.of(narrations);
        List<NameHit> names = new NameListener(words, recipe, pantry).all();
        return align(recipe, words, names, new QuantityListener(words, names, Set.of()).all());
    }

    /**
     * The same for a stream whose names are already found.
     *
     * @param amounts what may tell a step; none where somebody asks afterwards whether they are right, for one that is wrong
     *     would be taken for another step's
     */
    public static Alignment align(Recipe recipe, WordStream words, List<NameHit> names, List<SpokenQuantity> amounts) {
        if (recipe.steps().isEmpty() || words.size() == 0) {
            return new Alignment(List.of());
        }
        List<Moment> moments = new Evidence(recipe, words, names, amounts).moments();
        return spans(words, stepOfWord(words, moments, Walk.best(moments)));
    }

    private static int[] stepOfWord(WordStream words, List<Moment> moments, int[] stepOfMoment) {
        int[] steps = new int[words.size()];
        for (int m = 0; m < stepOfMoment.length; m++) {
            int start = moments.get(m).start();
            Arrays.fill(steps, start, start + moments.get(m).words(), stepOfMoment[m]);
        }
        absorb(steps);
        return steps;
    }

    /** A few words that seem to leave a step and come back to it don't leave it. */
    private static void absorb(int[] steps) {
        int from = 0;
        for (int at = 1; at < steps.length; at++) {
            if (steps[at] != steps[from]) {
                if (from > 0 && at - from < SHORTEST && steps[at] == steps[from - 1]) {
                    Arrays.fill(steps, from, at, steps[at]);
                }
                from = at;
            }
        }
    }

    private static Alignment spans(WordStream words, int[] steps) {
        List<StepSpan> spans = new ArrayList<>();
        int from = 0;
        for (int at = 1; at <= words.size(); at++) {
            boolean ends = at == words.size()
                    || steps[at] != steps[from]
                    || !words.at(at).source().equals(words.at(from).source());
            if (ends) {
                Token first = words.at(from);
                spans.add(new StepSpan(steps[from], first.source(), first.at(), end(words, at, first)));
                from = at;
            }
        }
        return new Alignment(List.copyOf(spans));
    }

    private static Duration end(WordStream words, int at, Token first) {
        if (at < words.size() && words.at(at).source().equals(first.source())) {
            return words.at(at).at();
        }
        return words.at(at - 1).at().plusSeconds(1);
    }
}
