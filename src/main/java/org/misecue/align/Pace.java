package org.misecue.align;

import java.util.List;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;

/**
 * About when in the talk each step should come: the more is used and done in it, the longer it takes. A weak sign that only
 * keeps words from leading to a step half a film away.
 */
final class Pace {

    /** The share of the talk that is said before the method begins. */
    private static final double BEFORE = 0.08;

    /** So much earlier or later, as a share of the talk, tells nothing. */
    private static final double SLACK = 0.15;

    /** What a word loses for a step that is all of the talk away. */
    private static final double PER_WORD = 0.1;

    /** Where each step should begin and the last one end, as shares of the talk; the first is the talk before the method. */
    private final double[] borders;

    Pace(Recipe recipe) {
        List<Step> steps = recipe.steps();
        double all = steps.stream().mapToInt(Pace::size).sum();
        borders = new double[steps.size() + 2];
        borders[1] = BEFORE;
        for (int step = 1; step <= steps.size(); step++) {
            borders[step + 1] = borders[step] + (1 - BEFORE) * size(steps.get(step - 1)) / all;
        }
    }

    private static int size(Step step) {
        return 1 + step.uses().size() + step.techniques().size();
    }

    /**
     * What words lose for a step because of where they stand. Where nothing speaks for any, the method has not begun, however
     * late it is.
     *
     * @param at where the words begin, as a share of the talk
     * @param step from 1; 0 for "before the method"
     */
    double loss(double at, int words, int step) {
        if (step == 0) {
            return 0;
        }
        double away = Math.max(borders[step] - at, at - borders[step + 1]);
        return PER_WORD * words * Math.max(0, away - SLACK);
    }
}
