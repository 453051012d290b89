package org.misecue.align;

import java.util.Arrays;
import java.util.List;

/**
 * The way through the steps, given what each moment speaks for: from before the method forward, with detours to other
 * steps, from each of which it goes on where it was left. A hidden Markov model: for each moment the step is taken that is
 * likeliest over all ways, found by the forward-backward algorithm.
 *
 * <p>A state is where the work is and where the talk is; they differ during a detour only. The figures are as likely as they
 * looked best in narrations with the steps marked by hand; between neighbours it makes little difference.
 */
final class Walk {

    private static final double NEXT = Math.exp(-2);
    private static final double SKIP = Math.exp(-2.25);
    private static final double DETOUR = Math.exp(-9);
    /** How much likelier a detour is where something said earlier is taken up. */
    private static final double TAKEN_UP = Math.exp(5);
    /** How much less likely each word makes it that the detour is still on. */
    private static final double AWAY = -0.5 / 12;
    /** How much likelier each word that says nothing makes it that the method has not begun. */
    private static final double BEFORE = 0.375 / 12;

    private final int states;
    private final List<Moment> moments;
    private final double[][] move;
    private final double[][] likely;

    private Walk(List<Moment> moments) {
        this.moments = moments;
        this.states = moments.get(0).support().length;
        this.move = moves(states);
        this.likely = moments.stream().map(Walk::likelihoods).toArray(double[][]::new);
    }

    /** The step of each moment; 0 before the method begins. */
    static int[] best(List<Moment> moments) {
        return new Walk(moments).best();
    }

    private static double[][] moves(int states) {
        double[][] moves = new double[states][states];
        for (int from = 0; from < states; from++) {
            for (int to = from + 1; to < states; to++) {
                moves[from][to] = NEXT * Math.pow(SKIP, to - from - 1);
            }
        }
        return moves;
    }

    private static double[] likelihoods(Moment moment) {
        double[] likely = new double[moment.support().length];
        for (int step = 0; step < likely.length; step++) {
            double support = moment.support()[step] + (step == 0 ? BEFORE * moment.words() : 0);
            likely[step] = support == 0 ? 1 : Math.exp(support);
        }
        return likely;
    }

    private double opening(int moment) {
        return Math.exp(moments.get(moment).opening());
    }

    private double leaving(int moment) {
        return DETOUR * opening(moment) * (moments.get(moment).takesUp() ? TAKEN_UP : 1);
    }

    private double staying(int moment) {
        return Math.exp(AWAY * moments.get(moment).words());
    }

    private int[] best() {
        double[][][] forward = forward();
        int[] best = new int[moments.size()];
        double[][] later = new double[states][states];
        for (double[] row : later) {
            Arrays.fill(row, 1);
        }
        for (int m = moments.size() - 1; m >= 0; m--) {
            best[m] = likeliest(forward[m], later);
            later = before(m, later);
        }
        return best;
    }

    /** Where the talk is, wherever the work may be. */
    private int likeliest(double[][] until, double[][] later) {
        double[] talk = new double[states];
        for (int work = 0; work < states; work++) {
            for (int step = 0; step < states; step++) {
                talk[step] += until[work][step] * later[work][step];
            }
        }
        int best = 0;
        for (int step = 1; step < states; step++) {
            if (talk[step] > talk[best]) {
                best = step;
            }
        }
        return best;
    }

    /** For each moment, work and talk: how likely they are, given all that was said until then. */
    private double[][][] forward() {
        double[][][] forward = new double[moments.size()][][];
        double[][] until = new double[states][states];
        until[0][0] = 1;
        for (int m = 0; m < forward.length; m++) {
            until = after(m, until);
            forward[m] = until;
        }
        return forward;
    }

    private double[][] after(int m, double[][] until) {
        double opening = opening(m);
        double leaving = leaving(m);
        double staying = staying(m);
        double[][] after = new double[states][states];
        double[] back = new double[states];
        for (int work = 1; work < states; work++) {
            for (int talk = 1; talk < states; talk++) {
                if (talk == work) {
                    continue;
                }
                back[work] += until[work][talk];
                after[work][talk] = (until[work][talk] + until[work][work] * leaving) * staying * likely[m][talk];
            }
        }
        for (int to = 0; to < states; to++) {
            double on = until[to][to] + back[to] * opening + (to > 0 ? back[to - 1] * NEXT * opening : 0);
            for (int from = 0; from < to; from++) {
                on += until[from][from] * move[from][to] * opening;
            }
            after[to][to] = on * likely[m][to];
        }
        return scaled(after);
    }

    /** For each work and talk before the moment: how likely it makes what is said from the moment on. */
    private double[][] before(int m, double[][] later) {
        double opening = opening(m);
        double leaving = leaving(m);
        double staying = staying(m);
        double[][] before = new double[states][states];
        for (int work = 0; work < states; work++) {
            double home = likely[m][work] * later[work][work];
            double onward = work + 1 < states ? NEXT * likely[m][work + 1] * later[work + 1][work + 1] : 0;
            double on = home;
            for (int to = work + 1; to < states; to++) {
                on += move[work][to] * opening * likely[m][to] * later[to][to];
            }
            for (int talk = 1; work > 0 && talk < states; talk++) {
                if (talk == work) {
                    continue;
                }
                double away = staying * likely[m][talk] * later[work][talk];
                on += leaving * away;
                before[work][talk] = away + (home + onward) * opening;
            }
            before[work][work] = on;
        }
        return scaled(before);
    }

    /** So that they don't become too small to be numbers; only how they compare counts. */
    private static double[][] scaled(double[][] likelihoods) {
        double most = 0;
        for (double[] row : likelihoods) {
            for (double one : row) {
                most = Math.max(most, one);
            }
        }
        for (double[] row : likelihoods) {
            for (int i = 0; i < row.length; i++) {
                row[i] /= most;
            }
        }
        return likelihoods;
    }
}
