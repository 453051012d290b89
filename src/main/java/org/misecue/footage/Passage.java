package org.misecue.footage;

import java.util.OptionalInt;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;

/**
 * Finds a short passage of one sound in a longer one of another, to the sample: correlation in which every frequency counts
 * alike, however loud a microphone made it (the phase transform; Knapp and Carter, 1976, "The generalized correlation
 * method for estimation of time delay", from memory).
 */
final class Passage {

    /** Below hums the mains, above not every track has anything. */
    private static final double LOWEST = 120;

    private static final double HIGHEST = 3700;

    /** Sound that comes again this soon is the room, or the same voice's next vibration; a fiftieth of a second. */
    private static final int BESIDE = Mono.RATE / 50;

    /** How far the right place stands out of the spread of all others, and over the next best one. */
    private static final double CLEAR = 6;

    private static final double OVER_NEXT = 1.5;

    /** Beside a sound silence is not quite silent, because both are transformed in one; −200 dB. */
    private static final double ROUNDING = 1e-10;

    private Passage() {}

    /**
     * Where the passage begins in the longer sound.
     *
     * @return in samples; empty where no place is plainly the right one
     */
    static OptionalInt find(float[] passage, float[] in) {
        int places = in.length - passage.length + 1;
        double[] alike = correlate(passage, in);
        int best = 0;
        for (int i = 1; i < places; i++) {
            best = alike[i] > alike[best] ? i : best;
        }
        double next = 0;
        double squares = 0;
        int others = 0;
        for (int i = 0; i < places; i++) {
            if (Math.abs(i - best) > BESIDE) {
                next = Math.max(next, alike[i]);
                squares += alike[i] * alike[i];
                others++;
            }
        }
        boolean clear = alike[best] > CLEAR * Math.sqrt(squares / others) && alike[best] > OVER_NEXT * next;
        return clear ? OptionalInt.of(best) : OptionalInt.empty();
    }

    private static double[] correlate(float[] passage, float[] in) {
        int size = Integer.highestOneBit(passage.length + in.length - 1) * 2;
        double[][] both = new double[2][size]; // two real signals in one transform
        int edge = (in.length - passage.length) / 2;
        for (int i = 0; i < passage.length; i++) {
            both[0][i] = passage[i] * (0.5 - 0.5 * Math.cos(2 * Math.PI * (i + 0.5) / passage.length));
        }
        for (int i = 0; i < in.length; i++) {
            // A loud hum that is cut off would be heard at every frequency.
            both[1][i] = in[i] * Math.min(1, (Math.min(i, in.length - 1 - i) + 0.5) / edge);
        }
        FastFourierTransformer.transformInPlace(both, DftNormalization.STANDARD, TransformType.FORWARD);
        double[][] phases = new double[2][size];
        int from = (int) Math.ceil(LOWEST * size / Mono.RATE);
        int to = (int) Math.floor(HIGHEST * size / Mono.RATE);
        for (int i = from; i <= to; i++) {
            int mirror = size - i;
            double oneRe = both[0][i] + both[0][mirror];
            double oneIm = both[1][i] - both[1][mirror];
            double twoRe = both[1][i] + both[1][mirror];
            double twoIm = both[0][mirror] - both[0][i];
            double re = oneRe * twoRe + oneIm * twoIm;
            double im = oneRe * twoIm - oneIm * twoRe;
            double length = Math.hypot(re, im);
            double louder = Math.max(oneRe * oneRe + oneIm * oneIm, twoRe * twoRe + twoIm * twoIm);
            if (length > ROUNDING * louder) {
                phases[0][i] = re / length;
                phases[1][i] = im / length;
                phases[0][mirror] = phases[0][i];
                phases[1][mirror] = -phases[1][i];
            }
        }
        FastFourierTransformer.transformInPlace(phases, DftNormalization.STANDARD, TransformType.INVERSE);
        return phases[0];
    }
}
