package org.misecue.footage;

import java.util.Random;

/**
 * Sound of a kitchen that is drawn from a seed: a voice that makes syllables and pauses, now and then a bowl that is put
 * down. One number between −1 and 1 for each sample.
 */
public final class Babble {

    public static final int RATE = 16_000;

    private final Random random;
    private final float[] sound;

    private Babble(long seed, double seconds) {
        this.random = new Random(seed);
        this.sound = new float[(int) (seconds * RATE)];
    }

    /** Talk of so many seconds. */
    public static float[] talk(long seed, double seconds) {
        Babble babble = new Babble(seed, seconds);
        int at = 0;
        while (at < babble.sound.length) {
            for (int syllable = 3 + babble.random.nextInt(20); syllable > 0; syllable--) {
                at = babble.syllable(at);
            }
            at += (int) (RATE * (0.2 + 1.5 * babble.random.nextDouble()));
            if (babble.random.nextInt(4) == 0) {
                babble.clatter(at - RATE / 10);
            }
        }
        return babble.sound;
    }

    /** Noise without any shape, as a microphone makes it by itself. */
    public static float[] noise(long seed, double seconds) {
        Babble babble = new Babble(seed, seconds);
        for (int i = 0; i < babble.sound.length; i++) {
            babble.sound[i] = (float) (0.3 * babble.random.nextGaussian());
        }
        return babble.sound;
    }

    /** A mixer: one turn after the other, each like the last. */
    public static float[] mixer(double seconds) {
        float[] sound = new float[(int) (seconds * RATE)];
        for (int i = 0; i < sound.length; i++) {
            double time = (double) i / RATE;
            double hum = 0;
            for (int harmonic = 1; harmonic < 60; harmonic++) {
                hum += Math.sin(2 * Math.PI * 50 * harmonic * time + harmonic * harmonic) / harmonic;
            }
            sound[i] = (float) (0.3 * hum * (1 + 0.7 * Math.sin(2 * Math.PI * 2 * time)));
        }
        return sound;
    }

    /** Two resonances over a buzz or a hiss. */
    private int syllable(int at) {
        int length = (int) (RATE * (0.09 + 0.2 * random.nextDouble()));
        boolean hissed = random.nextInt(5) == 0;
        double pitch = 100 + 120 * random.nextDouble();
        double glide = (random.nextDouble() - 0.5) * 60;
        double loud = 0.1 + 0.5 * random.nextDouble();
        double[] low = resonance(hissed ? 2500 : 300 + 600 * random.nextDouble(), 90);
        double[] high = resonance(hissed ? 4500 : 1100 + 1600 * random.nextDouble(), 150);
        double phase = 0;
        double[] past = new double[4];
        for (int i = 0; i < length && at + i < sound.length; i++) {
            phase += (pitch + glide * i / length) / RATE;
            double drive = hissed ? random.nextGaussian() * 0.4 : phase >= 1 ? 4 : 0;
            phase -= Math.floor(phase);
            double one = drive + low[0] * past[0] + low[1] * past[1];
            past[1] = past[0];
            past[0] = one;
            double two = drive + high[0] * past[2] + high[1] * past[3];
            past[3] = past[2];
            past[2] = two;
            double shape = Math.sin(Math.PI * i / length);
            sound[at + i] += (float) (0.05 * loud * shape * (one + 0.6 * two));
        }
        return at + length + (int) (RATE * 0.05 * random.nextDouble());
    }

    private static double[] resonance(double hertz, double width) {
        double radius = Math.exp(-Math.PI * width / RATE);
        return new double[] {2 * radius * Math.cos(2 * Math.PI * hertz / RATE), -radius * radius};
    }

    private void clatter(int at) {
        double hertz = 1500 + 3000 * random.nextDouble();
        for (int i = 0; i < RATE / 5 && at + i < sound.length; i++) {
            double ring = Math.sin(2 * Math.PI * hertz * i / RATE) + 0.5 * random.nextGaussian();
            sound[at + i] += (float) (0.25 * ring * Math.exp(-20.0 * i / RATE));
        }
    }
}
