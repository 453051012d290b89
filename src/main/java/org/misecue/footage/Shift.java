package org.misecue.footage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * A guess at how two sounds lie to one another, from how their levels go up and down.
 *
 * @param later how many steps of {@link Levels} after the first sound's beginning the second's lies
 * @param strength how far it stands out of all other shifts, in their spreads
 */
record Shift(int later, double strength) {

    /** With less in common nothing could be told. */
    static final int LEAST = 5 * Levels.A_SECOND;

    private static final int MOST = 4;

    /** What sticks out less is what chance does with a million shifts. */
    static final double FAINTEST = 4;

    /** Speech is like itself a moment later. */
    private static final int BESIDE = 3 * Levels.A_SECOND / 2;

    /** The likeliest, best first. */
    static List<Shift> likeliest(Levels first, Levels second) {
        int from = Math.min(0, LEAST - second.steps());
        int to = Math.max(0, first.steps() - LEAST);
        if (Math.min(first.steps(), second.steps()) < LEAST) {
            return List.of();
        }
        double[] alike = correlate(first, second);
        double[] strengths = new double[to - from + 1];
        for (int later = from; later <= to; later++) {
            int common = Math.min(first.steps(), second.steps() + later) - Math.max(0, later);
            // What two sounds that have nothing to do with each other reach grows with the root of their length.
            strengths[later - from] = alike[Math.floorMod(later, alike.length)] / Math.sqrt(common);
        }
        double spread = spread(strengths);
        List<Shift> found = new ArrayList<>();
        while (found.size() < MOST && spread > 0) {
            int best = 0;
            for (int i = 1; i < strengths.length; i++) {
                best = strengths[i] > strengths[best] ? i : best;
            }
            if (strengths[best] < FAINTEST * spread) {
                break;
            }
            found.add(new Shift(best + from, strengths[best] / spread));
            Arrays.fill(strengths, Math.max(0, best - BESIDE), Math.min(strengths.length, best + BESIDE), 0);
        }
        return found;
    }

    /** At each shift the sum of what is alike, over all bands: two bands at a time, as one complex signal. */
    private static double[] correlate(Levels first, Levels second) {
        int size = Integer.highestOneBit(first.steps() + second.steps() - 1) * 2;
        double[][] sum = new double[2][size];
        for (int band = 0; band < Levels.BANDS; band += 2) {
            double[][] one = spectrum(first, band, size);
            double[][] two = spectrum(second, band, size);
            for (int i = 0; i < size; i++) {
                sum[0][i] += one[0][i] * two[0][i] + one[1][i] * two[1][i];
                sum[1][i] += one[1][i] * two[0][i] - one[0][i] * two[1][i];
            }
        }
        FastFourierTransformer.transformInPlace(sum, DftNormalization.STANDARD, TransformType.INVERSE);
        return sum[0];
    }

    private static double[][] spectrum(Levels levels, int band, int size) {
        double[][] signal = {Arrays.copyOf(levels.swing(band), size), Arrays.copyOf(levels.swing(band + 1), size)};
        FastFourierTransformer.transformInPlace(signal, DftNormalization.STANDARD, TransformType.FORWARD);
        return signal;
    }

    /** Of what chance does: by the middle one of all sizes, which a few that stand out do not move. */
    private static double spread(double[] strengths) {
        double[] sizes = Arrays.stream(strengths).map(Math::abs).sorted().toArray();
        return sizes[sizes.length / 2] / 0.6745; // of a normal distribution half lies within this
    }
}
