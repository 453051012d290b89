package org.misecue.footage;

import java.time.Duration;
import java.util.Arrays;
import org.apache.commons.math3.transform.DftNormalization;
import org.apache.commons.math3.transform.FastFourierTransformer;
import org.apache.commons.math3.transform.TransformType;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** Measures how loud each band of a sound is while it goes by. */
final class LevelMeter implements AutoCloseable {

    private static final int WINDOW = 256;

    /** From below a man's voice to what the lowest rate can hold, each band a little over half an octave. */
    private static final double LOWEST = 150;

    private static final double HIGHEST = 3800;

    /** 16 bits hold nothing that is softer. */
    private static final double SOFTEST = 1e-10;

    private final Mono mono;
    private final double[] bell = new double[WINDOW];
    private final int[] borders = new int[Levels.BANDS + 1];
    private final float[] heard = new float[WINDOW + Levels.STEP];
    private final double[][] spectrum = new double[2][WINDOW];
    private final byte[][] levels = new byte[Levels.BANDS][6000];
    private int filled = WINDOW / 2; // a window's middle is its moment; before the film there is silence
    private int steps;

    LevelMeter(Decoder decoder) {
        mono = Mono.whole(decoder, this::take);
        for (int i = 0; i < WINDOW; i++) {
            bell[i] = 0.5 - 0.5 * Math.cos(2 * Math.PI * i / WINDOW);
        }
        for (int band = 0; band <= Levels.BANDS; band++) {
            double hertz = LOWEST * Math.pow(HIGHEST / LOWEST, (double) band / Levels.BANDS);
            borders[band] = (int) Math.round(hertz * WINDOW / Mono.RATE);
        }
    }

    /** Hears a decoded frame, which stays the caller's. */
    void hear(AVFrame frame) {
        mono.hear(frame);
    }

    /** How far it has heard. */
    Duration until() {
        return Duration.ofMillis(steps * 1000L / Levels.A_SECOND);
    }

    /** What it has heard until the end. */
    Levels levels() {
        mono.end();
        byte[][] whole = new byte[Levels.BANDS][];
        Arrays.setAll(whole, band -> Arrays.copyOf(levels[band], steps));
        return new Levels(whole, steps);
    }

    private void take(float[] samples) {
        int taken = 0;
        while (taken < samples.length) {
            int some = Math.min(samples.length - taken, heard.length - filled);
            System.arraycopy(samples, taken, heard, filled, some);
            taken += some;
            filled += some;
            if (filled == heard.length) {
                measure();
                filled -= 2 * Levels.STEP;
                System.arraycopy(heard, 2 * Levels.STEP, heard, 0, filled);
            }
        }
    }

    /** Two windows in one transform, as the two parts of a complex signal. */
    private void measure() {
        for (int i = 0; i < WINDOW; i++) {
            spectrum[0][i] = heard[i] * bell[i];
            spectrum[1][i] = heard[i + Levels.STEP] * bell[i];
        }
        FastFourierTransformer.transformInPlace(spectrum, DftNormalization.STANDARD, TransformType.FORWARD);
        for (int band = 0; band < Levels.BANDS; band++) {
            if (steps + 2 > levels[band].length) {
                levels[band] = Arrays.copyOf(levels[band], 2 * levels[band].length);
            }
            double first = 0;
            double second = 0;
            for (int i = borders[band]; i < borders[band + 1]; i++) {
                int mirror = WINDOW - i;
                double re = spectrum[0][i] + spectrum[0][mirror];
                double im = spectrum[1][i] - spectrum[1][mirror];
                first += re * re + im * im;
                re = spectrum[1][i] + spectrum[1][mirror];
                im = spectrum[0][i] - spectrum[0][mirror];
                second += re * re + im * im;
            }
            levels[band][steps] = level(first / 4);
            levels[band][steps + 1] = level(second / 4);
        }
        steps += 2;
    }

    private static byte level(double power) {
        double decibels = 10 * Math.log10(power / (WINDOW * WINDOW) + SOFTEST);
        return (byte) Math.max(Byte.MIN_VALUE, Math.min(Byte.MAX_VALUE, Math.round(2 * (decibels + 50))));
    }

    @Override
    public void close() {
        mono.close();
    }
}
