package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.notice.BadInput;

/** Signals and tolerances are those of EBU Tech 3341 and 3342, from memory: they were not looked up. */
class SoundCheckTest {

    private static final Lookout TO_THE_END = at -> true;

    /** Tech 3341: ±0.1 LU. */
    private static final Offset<BigDecimal> CLOSE = within(new BigDecimal("0.1"));

    private static final FrameRate PAL = new FrameRate(25, 1);

    @TempDir
    Path folder;

    private List<TrackSound> heard(Path film) {
        return SoundCheck.of(film, Hush.USUAL, TO_THE_END).orElseThrow().stream()
                .map(Optional::orElseThrow)
                .toList();
    }

    private TrackSound heard(TestSound sound) {
        return heard(sound.wav(folder.resolve("sound.wav"))).get(0);
    }

    private static void isLoud(TrackSound sound, String lufs) {
        assertThat(sound.loudness().integrated().orElseThrow()).isCloseTo(new BigDecimal(lufs), CLOSE);
    }

    @Test
    void a_steady_sine_reads_what_tech_3341_asks_for_in_cases_1_and_2() {
        isLoud(heard(new TestSound(2).sine(20, 1000, -23, -23)), "-23");
        isLoud(heard(new TestSound(2).sine(20, 1000, -33, -33)), "-33");
    }

    /** Case 3 in a fourth of its length: the gate weighs blocks, and their shares stay the same. */
    @Test
    void quiet_parts_do_not_count_as_in_case_3_of_tech_3341() {
        TestSound sound = new TestSound(2)
                .sine(2.5, 1000, -36, -36)
                .sine(15, 1000, -23, -23)
                .sine(2.5, 1000, -36, -36);
        isLoud(heard(sound), "-23");
    }

    @Test
    void five_loudspeakers_are_weighed_as_in_case_6_of_tech_3341() {
        double none = Double.NEGATIVE_INFINITY;
        isLoud(heard(new TestSound(6).sine(10, 1000, -28, -28, -24, none, -30, -30)), "-23");
        isLoud(heard(new TestSound(6).sine(10, 1000, -28, -28, -24, -3, -30, -30)), "-23"); // the LFE is left out
    }

    /** BS.1770 sums channels: half the sum is 10·lg 2 = 3.01 LU less. */
    @Test
    void one_channel_is_measured_as_one() {
        isLoud(heard(new TestSound(1).sine(5, 1000, -23)), "-26.01");
    }

    /**
     * A fourth of the sample rate, an eighth of a turn late: no sample comes nearer to the peak than 3 dB. Tech 3341 allows
     * +0.2 and −0.4. It is faded in and out, because a sudden beginning swings higher between its samples.
     */
    @Test
    void a_peak_between_the_samples_is_found() {
        TestSound sound = new TestSound(2);
        double hertz = TestSound.RATE / 4.0;
        for (int step = -60; step <= 60; step++) {
            double level = -6.0 - Math.abs(step);
            sound.sine(step == 0 ? 1 : 0.001, hertz, Math.PI / 4, new double[] {level, level});
        }
        assertThat(heard(sound).loudness().truePeak().orElseThrow())
                .isBetween(new BigDecimal("-6.4"), new BigDecimal("-5.8"));
    }

    @Test
    void a_range_of_ten_is_one_of_ten_as_in_case_1_of_tech_3342() {
        TestSound sound = new TestSound(2).sine(20, 1000, -20, -20).sine(20, 1000, -30, -30);
        assertThat(heard(sound).loudness().range().orElseThrow()).isCloseTo(BigDecimal.TEN, within(BigDecimal.ONE));
    }

    @Test
    void what_is_shorter_than_a_block_has_a_peak_and_no_loudness() {
        Loudness loudness = heard(new TestSound(2).sine(0.35, 1000, -12, -12)).loudness();
        assertThat(loudness.integrated()).isEmpty();
        assertThat(loudness.range()).isEmpty();
        assertThat(loudness.truePeak().orElseThrow()).isCloseTo(new BigDecimal("-12"), CLOSE);
    }

    @Test
    void silence_has_neither_loudness_nor_peak() {
        TrackSound sound = heard(new TestSound(2).nothing(12));
        assertThat(sound.loudness()).isEqualTo(new Loudness(none(), none(), none()));
        assertThat(sound.silences()).containsExactly(new Silence(Duration.ZERO, Duration.ofSeconds(12)));
    }

    private static Optional<BigDecimal> none() {
        return Optional.empty();
    }

    @Test
    void silences_of_some_length_are_found_to_the_sample_also_at_the_end() {
        TrackSound sound = heard(new TestSound(2)
                .sine(1, 440, -20, -20)
                .nothing(2.5)
                .sine(0.5, 440, -20, -20)
                .nothing(1.9)
                .sine(1.1, 440, -20, -20)
                .sine(3, 440, -60, -55)
                .sine(1, 440, -20, -46) // one channel is heard
                .sine(2.25, 440, -60, -60));
        List<Duration> moments = sound.silences().stream()
                .flatMap(silence -> java.util.stream.Stream.of(silence.from(), silence.to()))
                .toList();
        long[] millis = {1000, 3500, 7000, 10_000, 11_000, 13_250};
        assertThat(moments).hasSize(millis.length);
        for (int i = 0; i < millis.length; i++) {
            // A sine takes a moment to rise and to fall beyond the level.
            assertThat(moments.get(i).minusMillis(millis[i]).abs()).isLessThan(Duration.ofMillis(1));
        }
    }

    @Test
    void what_counts_as_silence_can_be_said() {
        Path film = new TestSound(1).sine(1, 440, -20).sine(1, 440, -36).wav(folder.resolve("film.wav"));
        Hush hush = new Hush(new BigDecimal("-30.5"), Duration.ofMillis(700));
        List<Silence> silences = SoundCheck.of(film, hush, TO_THE_END)
                .orElseThrow()
                .get(0)
                .orElseThrow()
                .silences();
        assertThat(silences).hasSize(1);
        assertThat(silences.get(0).length().toMillis()).isBetween(999L, 1001L);
    }

    @Test
    void every_sound_track_is_heard_for_itself() {
        Path one = new TestSound(2).sine(2, 1000, -23, -23).wav(folder.resolve("one.wav"));
        Path other = new TestSound(1).nothing(3).wav(folder.resolve("other.wav"));
        List<TrackSound> both = heard(TestSound.together(folder.resolve("both.mov"), one, other));
        assertThat(both).hasSize(2);
        isLoud(both.get(0), "-23");
        assertThat(both.get(0).silences()).isEmpty();
        assertThat(both.get(1).loudness().integrated()).isEmpty();
        assertThat(both.get(1).silences()).hasSize(1);
    }

    @Test
    void a_track_that_cannot_be_decoded_keeps_nobody_from_hearing_the_others() throws IOException {
        Path one = new TestSound(2).sine(2, 1000, -23, -23).wav(folder.resolve("one.wav"));
        Path both = TestSound.together(folder.resolve("both.mov"), one, one);
        String bytes = Files.readString(both, StandardCharsets.ISO_8859_1);
        assertThat(bytes).contains("sowt");
        Files.writeString(both, bytes.replaceFirst("sowt", "qzqz"), StandardCharsets.ISO_8859_1);

        List<Optional<TrackSound>> heard =
                SoundCheck.of(both, Hush.USUAL, TO_THE_END).orElseThrow();

        assertThat(heard.get(0)).isEmpty();
        isLoud(heard.get(1).orElseThrow(), "-23");
    }

    /** Recorders often say how many channels there are and not which. */
    @Test
    void channels_without_names_are_heard() throws IOException {
        Path film = new TestSound(2).sine(2, 1000, -23, -23).wav(folder.resolve("sound.wav"));
        byte[] bytes = Files.readAllBytes(film);
        bytes[40] = 0; // the mask of loudspeakers
        Files.write(film, bytes);
        isLoud(heard(film).get(0), "-23");
    }

    @Test
    void a_film_without_sound_has_nothing_to_hear() {
        Path film =
                TestFilm.write(folder.resolve("mute.mp4"), 10, PAL, false, number -> 40_000L * number, recorder -> {});
        assertThat(heard(film)).isEmpty();
    }

    @Test
    void times_are_on_the_clock_that_begins_with_the_first_picture() {
        Path film = TestFilm.write(
                folder.resolve("late.mkv"), 50, PAL, false, number -> 2_000_000L + 40_000L * number, recorder -> {});
        Path sound = new TestSound(1).sine(3, 440, -20).nothing(5).wav(folder.resolve("sound.wav"));
        List<Silence> silences = heard(TestSound.together(folder.resolve("both.mkv"), film, sound))
                .get(0)
                .silences();
        assertThat(silences).hasSize(1);
        assertThat(silences.get(0).from()).isBetween(Duration.ofMillis(995), Duration.ofMillis(1005));
    }

    @Test
    void progress_is_told_and_whoever_looks_on_may_stop_it() {
        Path film = new TestSound(2).sine(5, 1000, -23, -23).wav(folder.resolve("sound.wav"));
        List<Duration> told = new ArrayList<>();
        SoundCheck.of(film, Hush.USUAL, told::add);
        assertThat(told).isSorted();
        assertThat(told.get(told.size() - 1)).isGreaterThan(Duration.ofMillis(4500));

        assertThat(SoundCheck.of(film, Hush.USUAL, at -> at.compareTo(Duration.ofSeconds(1)) < 0))
                .isEmpty();
    }

    @Test
    void what_is_no_film_or_breaks_off_is_refused_in_a_sentence() throws IOException {
        Path film = TestFilm.even(folder.resolve("film.mp4"), 20, PAL);
        byte[] whole = Files.readAllBytes(film);
        Files.write(film, Arrays.copyOf(whole, whole.length / 2));
        assertThatThrownBy(() -> heard(film)).isInstanceOf(BadInput.class).hasMessageContaining("copy it again");
        Files.write(film, new byte[0]);
        assertThatThrownBy(() -> heard(film)).isInstanceOf(BadInput.class).hasMessageContaining("the film is empty");
    }
}
