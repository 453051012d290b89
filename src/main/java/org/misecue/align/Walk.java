package org.misecue.align;

import java.util.Arrays;
import java.util.List;

/** The best walk through the steps, given what each block of speech speaks for: stay, go on, seldom jump or go back. */
final class Walk {

    private static final double NEXT = -0.8;
    private static final double SKIP = -0.9;
    private static final double BACK = -3.0;
    private static final double FURTHER_BACK = -0.5;

    /** What a block costs that says nothing of the step that is on: the method begins when it is first spoken of. */
    private static final double SILENT = -0.15;

    private Walk() {}

    /**
     * @param blocks for each block the support for each step, index 0 being "before the method"
     * @return the step of each block
     */
    static int[] best(List<double[]> blocks) {
        int states = blocks.get(0).length;
        int[][] cameFrom = new int[blocks.size()][states];
        double[] score = new double[states];
        Arrays.fill(score, Double.NEGATIVE_INFINITY);
        score[0] = 0;
        for (int b = 0; b < blocks.size(); b++) {
            double[] next = new double[states];
            for (int to = 0; to < states; to++) {
                int from = bestFrom(score, to);
                cameFrom[b][to] = from;
                double support = blocks.get(b)[to];
                next[to] = score[from] + move(from, to) + (support > 0 || to == 0 ? support : SILENT);
            }
            score = next;
        }
        return trace(cameFrom, score);
    }

    private static int bestFrom(double[] score, int to) {
        int best = to;
        for (int from = 0; from < score.length; from++) {
            if (score[from] + move(from, to) > score[best] + move(best, to)) {
                best = from;
            }
        }
        return best;
    }

    private static double move(int from, int to) {
        if (from == to) {
            return 0;
        }
        if (to == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        if (to > from) {
            return NEXT + SKIP * (to - from - 1);
        }
        return BACK + FURTHER_BACK * (from - to - 1);
    }

    private static int[] trace(int[][] cameFrom, double[] score) {
        int at = 0;
        for (int state = 1; state < score.length; state++) {
            if (score[state] > score[at]) {
                at = state;
            }
        }
        int[] path = new int[cameFrom.length];
        for (int b = cameFrom.length - 1; b >= 0; b--) {
            path[b] = at;
            at = cameFrom[b][at];
        }
        return path;
    }
}
