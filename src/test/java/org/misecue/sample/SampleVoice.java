package org.misecue.sample;

import java.util.List;
import java.util.Locale;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.narration.Word;

/**
 * A babbling voice: for each word of the narration as many vowels as it has, each a row of glottal pulses through two
 * formants, and silence where nobody speaks.
 */
final class SampleVoice {

    static final int RATE = 16_000;

    private static final double LONGEST_WORD = 0.45;
    private static final double PITCH = 165;
    private static final double LOUDNESS = 5_000;

    /** The first two formants, in hertz, of the vowels that letters stand for, as in any phonetics table: rounded. */
    private enum Vowel {
        A(750, 1300),
        E(530, 1850),
        I(300, 2250),
        O(500, 900),
        U(320, 800);

        private final double first;
        private final double second;

        Vowel(double first, double second) {
            this.first = first;
            this.second = second;
        }
    }

    private SampleVoice() {}

    static short[] speak(Narration narration, int seconds) {
        short[] sound = new short[seconds * RATE];
        for (Cue cue : narration.cues()) {
            List<Word> words = cue.words();
            for (int i = 0; i < words.size(); i++) {
                double start = words.get(i).at().toNanos() / 1e9;
                double next = (i + 1 < words.size() ? words.get(i + 1).at() : cue.end()).toNanos() / 1e9;
                word(sound, words.get(i).text(), start, Math.min(0.9 * (next - start), LONGEST_WORD));
            }
        }
        return sound;
    }

    private static void word(short[] sound, String text, double start, double length) {
        List<Vowel> vowels = text.toLowerCase(Locale.ROOT)
                .chars()
                .filter(letter -> "aeiou".indexOf(letter) >= 0)
                .mapToObj(letter -> Vowel.valueOf(Character.toString(letter).toUpperCase(Locale.ROOT)))
                .toList();
        if (vowels.isEmpty()) {
            vowels = List.of(Vowel.E);
        }
        double each = length / vowels.size();
        // The melody rises and falls with the words, the same each time.
        double pitch = PITCH * (1 + 0.12 * Math.sin(start * 2.1) + 0.05 * (text.hashCode() % 7) / 7);
        for (int i = 0; i < vowels.size(); i++) {
            vowel(sound, vowels.get(i), pitch, start + i * each, each);
        }
    }

    private static void vowel(short[] sound, Vowel vowel, double pitch, double start, double length) {
        int from = (int) (start * RATE);
        int samples = Math.min((int) (length * RATE), sound.length - from);
        for (int i = 0; i < samples; i++) {
            double sincePulse = i / (double) RATE % (1 / pitch);
            double ring = Math.exp(-sincePulse * 350) * Math.sin(2 * Math.PI * vowel.first * sincePulse)
                    + 0.5 * Math.exp(-sincePulse * 500) * Math.sin(2 * Math.PI * vowel.second * sincePulse);
            double swell = Math.sin(Math.PI * i / samples);
            sound[from + i] = (short) (LOUDNESS * swell * ring);
        }
    }
}
