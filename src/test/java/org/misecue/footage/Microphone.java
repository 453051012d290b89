package org.misecue.footage;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;

/**
 * Hears a sound in its own way and writes it down as WAV of 16 bits.
 *
 * @param late how many seconds of the sound are over when it begins to record; below zero it begins before the sound
 * @param seconds how long it records
 * @param decibels how loud it makes the sound
 * @param noise how far its own noise lies under the sound, in decibels
 * @param tinny whether it hears neither lows nor highs
 * @param room how long the walls give back what they heard, in seconds
 * @param fast by how many millionths its clock runs fast
 * @param rate samples in a second
 * @param seed of its noise and its walls
 */
public record Microphone(
        double late,
        double seconds,
        double decibels,
        double noise,
        boolean tinny,
        double room,
        double fast,
        int rate,
        long seed) {

    /** Hears all that there is as it is. */
    public static Microphone good(double late, double seconds) {
        return new Microphone(late, seconds, 0, 200, false, 0, 0, 48_000, 1);
    }

    public Microphone softer(double by) {
        return new Microphone(late, seconds, decibels - by, noise, tinny, room, fast, rate, seed);
    }

    public Microphone noisy(double under) {
        return new Microphone(late, seconds, decibels, under, tinny, room, fast, rate, seed);
    }

    public Microphone asTinny() {
        return new Microphone(late, seconds, decibels, noise, true, room, fast, rate, seed);
    }

    public Microphone in(double wider) {
        return new Microphone(late, seconds, decibels, noise, tinny, wider, fast, rate, seed);
    }

    public Microphone running(double faster) {
        return new Microphone(late, seconds, decibels, noise, tinny, room, faster, rate, seed);
    }

    public Microphone at(int samples) {
        return new Microphone(late, seconds, decibels, noise, tinny, room, fast, samples, seed);
    }

    public Microphone like(long other) {
        return new Microphone(late, seconds, decibels, noise, tinny, room, fast, rate, other);
    }

    /** Records a sound at the rate of {@link Babble}. */
    public Path record(float[] sound, Path file) {
        float[] heard = tinny ? narrow(sound) : sound;
        heard = room > 0 ? echo(heard) : heard;
        Random random = new Random(seed);
        double gain = Math.pow(10, decibels / 20);
        double hiss = loudness(heard) * Math.pow(10, -noise / 20);
        int count = (int) (seconds * rate);
        ByteBuffer head = ByteBuffer.allocate(44).order(ByteOrder.LITTLE_ENDIAN);
        head.put(ascii("RIFF")).putInt(36 + 2 * count).put(ascii("WAVEfmt ")).putInt(16);
        head.putShort((short) 1).putShort((short) 1).putInt(rate).putInt(2 * rate);
        head.putShort((short) 2).putShort((short) 16).put(ascii("data")).putInt(2 * count);
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16)) {
            out.write(head.array());
            for (int i = 0; i < count; i++) {
                double time = late + i / (rate * (1 + fast / 1e6));
                double value = 32767 * gain * (between(heard, time * Babble.RATE) + hiss * random.nextGaussian());
                int sample = (int) Math.max(-32768, Math.min(32767, Math.round(value)));
                out.write(sample);
                out.write(sample >> 8);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }

    /** A cubic through four samples. */
    private static double between(float[] sound, double at) {
        int i = (int) Math.floor(at);
        double x = at - i;
        double a = sample(sound, i - 1);
        double b = sample(sound, i);
        double c = sample(sound, i + 1);
        double d = sample(sound, i + 2);
        return b + x / 2 * (c - a + x * (2 * a - 5 * b + 4 * c - d + x * (3 * (b - c) + d - a)));
    }

    private static float sample(float[] sound, int i) {
        return i < 0 || i >= sound.length ? 0 : sound[i];
    }

    /** One step of a filter each for what lies under 800 Hz and over 2500 Hz, twice. */
    private static float[] narrow(float[] sound) {
        float[] out = sound.clone();
        for (int round = 0; round < 2; round++) {
            double low = 0;
            double smooth = 0;
            for (int i = 0; i < out.length; i++) {
                low += (out[i] - low) * (1 - Math.exp(-2 * Math.PI * 800 / Babble.RATE));
                smooth += (out[i] - low - smooth) * (1 - Math.exp(-2 * Math.PI * 2500 / Babble.RATE));
                out[i] = (float) smooth;
            }
        }
        return out;
    }

    /** What comes straight, and as loud as that two hundred echoes that fade by 60 dB. */
    private float[] echo(float[] sound) {
        Random walls = new Random(seed * 31 + 7);
        float[] out = sound.clone();
        for (int echo = 0; echo < 200; echo++) {
            int behind = (int) (Babble.RATE * room * walls.nextDouble());
            double height = walls.nextGaussian() * Math.pow(10, -3.0 * behind / (Babble.RATE * room)) * 0.2;
            for (int i = behind; i < out.length; i++) {
                out[i] += (float) (height * sound[i - behind]);
            }
        }
        return out;
    }

    /** Root of the mean square, over the whole sound with its pauses. */
    private static double loudness(float[] sound) {
        double squares = 0;
        for (float one : sound) {
            squares += one * one;
        }
        return Math.sqrt(squares / sound.length);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
