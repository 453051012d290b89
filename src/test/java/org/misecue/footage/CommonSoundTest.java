package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CommonSoundTest {

    /** Far less than half a frame; one sample at 8000 Hz and a bit. */
    private static final double EXACT = 0.0002;

    private static final float[] TALK = Babble.talk(7, 60);

    @TempDir
    Path folder;

    private static Microphone mic(double late, double seconds) {
        return Microphone.good(late, seconds).at(16_000);
    }

    private CommonSound.Listened listen(String name, Microphone microphone, float[] sound) {
        return listen(microphone.record(sound, folder.resolve(name + ".wav")));
    }

    static CommonSound.Listened listen(Path film) {
        return new CommonSound.Listened(
                film, Footage.probe(film), Levels.of(film, at -> true).orElseThrow());
    }

    private Optional<Offset> offset(Microphone one, float[] first, Microphone two, float[] second) {
        return CommonSound.beside(listen("first", one, first), listen("second", two, second))
                .offset();
    }

    private static double seconds(Duration time) {
        return time.toNanos() / 1e9;
    }

    private static Arguments heard(String what, UnaryOperator<Microphone> one, UnaryOperator<Microphone> two) {
        return Arguments.of(what, one, two);
    }

    static Stream<Arguments> microphones() {
        UnaryOperator<Microphone> good = mic -> mic;
        return Stream.of(
                heard("the same", good, good),
                heard("44100 samples a second beside 16000", good, mic -> mic.at(44_100)),
                heard("48000 samples a second beside 8000", mic -> mic.at(48_000), mic -> mic.at(8_000)),
                heard("20 dB softer", good, mic -> mic.softer(20)),
                heard("noise at −20 dB", mic -> mic.noisy(20), mic -> mic.noisy(20)
                        .like(2)),
                heard("noise at −6 dB", mic -> mic.noisy(6), mic -> mic.noisy(6).like(2)),
                heard("noise as loud as the talk", mic -> mic.noisy(0), mic -> mic.noisy(0)
                        .like(2)),
                heard("tinny", good, Microphone::asTinny),
                heard(
                        "tinny, soft and noisy",
                        mic -> mic.noisy(10),
                        mic -> mic.asTinny().softer(20).noisy(6).like(2)),
                heard("far away in the room", good, mic -> mic.in(0.5).like(2)),
                heard("walls around both", mic -> mic.in(0.4), mic -> mic.in(0.5)
                        .like(2)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("microphones")
    void two_microphones_are_brought_together(
            String what, UnaryOperator<Microphone> one, UnaryOperator<Microphone> two) {
        Offset offset = offset(one.apply(mic(0, 40)), TALK, two.apply(mic(12.3456, 40)), TALK)
                .orElseThrow();

        assertThat(seconds(offset.later())).isCloseTo(12.3456, within(EXACT));
        assertThat(offset.apart()).isZero();
        assertThat(offset.basis()).isInstanceOf(Offset.BySound.class);
    }

    @ParameterizedTest(name = "begun at {0} and {2}")
    @MethodSource
    void films_may_have_little_in_common(double late, double seconds, double late2, double seconds2) {
        Offset offset =
                offset(mic(late, seconds), TALK, mic(late2, seconds2), TALK).orElseThrow();
        assertThat(seconds(offset.later())).isCloseTo(late2 - late, within(EXACT));
    }

    static Stream<Arguments> films_may_have_little_in_common() {
        return Stream.of(
                Arguments.of(12.3456, 40, 0, 40),
                Arguments.of(0, 40, 0, 40),
                Arguments.of(0, 40, 0.0103, 40),
                Arguments.of(0, 40, 28, 30),
                Arguments.of(28, 30, 0, 40),
                Arguments.of(0, 60, 41.7, 8));
    }

    /** Its frames say where its clock begins, not its sound; AAC and the container's ticks cost a little. */
    @Test
    void a_film_whose_picture_begins_late_lies_by_its_picture() {
        Take take = new Take(16, 40);
        Path one = take.film(folder.resolve("one.mp4"), 1, 500);
        Path late = take.film(folder.resolve("late.mkv"), 3, 500, "", 1200);
        Offset offset = CommonSound.beside(listen(one), listen(late)).offset().orElseThrow();
        assertThat(seconds(offset.later())).isCloseTo(3 + 1.2 - 1, within(0.002));
    }

    @Test
    void a_take_in_which_little_is_said_is_enough() {
        float[] quiet = Arrays.copyOf(Babble.talk(15, 30), 260 * Babble.RATE);
        Microphone one = mic(0, 240).at(8000).noisy(10);
        Offset offset = offset(one, quiet, mic(4.5, 240).at(8000).noisy(10).like(2), quiet)
                .orElseThrow();
        assertThat(seconds(offset.later())).isCloseTo(4.5, within(EXACT));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void what_nothing_tells_is_not_known(String what, float[] first, float[] second) {
        Microphone one = mic(0, 40).noisy(30);
        Microphone two = mic(3.7, 40).noisy(30).like(2);
        assertThat(offset(one, first, two, second)).isEmpty();
    }

    static Stream<Arguments> what_nothing_tells_is_not_known() {
        return Stream.of(
                Arguments.of("other talk", TALK, Babble.talk(8, 60)),
                Arguments.of("silence", new float[60], new float[60]),
                Arguments.of("talk beside silence", TALK, new float[60]),
                Arguments.of("each its own noise", Babble.noise(1, 60), Babble.noise(2, 60)),
                Arguments.of("a mixer, each turn like the last", Babble.mixer(60), Babble.mixer(60)),
                Arguments.of(
                        "other talk over the same hum of the mains",
                        sum(TALK, Babble.mixer(60)),
                        sum(Babble.talk(8, 60), Babble.mixer(60))));
    }

    /** Music from a loudspeaker, or a film that was cut out of another, is the same sound at two times. */
    @Test
    void what_is_the_same_at_two_offsets_is_not_known() {
        float[] twice = new float[60 * Babble.RATE];
        float[] once = Babble.talk(9, 30);
        System.arraycopy(once, 0, twice, 0, once.length);
        System.arraycopy(once, 0, twice, once.length, once.length);

        assertThat(offset(mic(0, 60), twice, mic(0, 30), once)).isEmpty();
    }

    @Test
    void the_same_tune_in_two_takes_is_not_enough() {
        float[] tune = Babble.talk(10, 8);
        float[] one = Babble.talk(11, 40);
        float[] two = Babble.talk(12, 40);
        System.arraycopy(tune, 0, one, 5 * Babble.RATE, tune.length);
        System.arraycopy(tune, 0, two, 20 * Babble.RATE, tune.length);

        assertThat(offset(mic(0, 40), one, mic(0, 40), two)).isEmpty();
    }

    /** 50 millionths are 180 ms in an hour, and more than half a frame in ten minutes. */
    @Test
    void clocks_that_run_apart_are_told() {
        float[] talk = Babble.talk(13, 620);
        Offset offset = offset(
                        mic(0, 600).at(8000), talk, mic(12.3456, 600).at(8000).running(50), talk)
                .orElseThrow();

        assertThat(seconds(offset.later())).isCloseTo(12.3456, within(0.001));
        assertThat(seconds(offset.apart())).isCloseTo(-0.180, within(0.005));
        double then = 12.3456 + 500 / (1 + 50e-6);
        assertThat(seconds(offset.inSecond(Duration.ofNanos((long) (then * 1e9)))))
                .isCloseTo(500, within(0.001));
    }

    private static CommonSound.Listened at(String timecode, CommonSound.Listened film) {
        Timecode starts = Timecode.parse(timecode, new FrameRate(25, 1));
        FilmInfo info = film.info();
        return new CommonSound.Listened(
                film.film(), new FilmInfo(info.length(), info.tracks(), Optional.of(starts)), film.levels());
    }

    /** Labels count frames: 12.36 s is the frame after 12.3456 s. */
    @Test
    void films_of_one_time_code_drift_as_their_sound_tells() {
        float[] talk = Babble.talk(13, 620);
        Microphone two = mic(12.3456, 600).at(8000).running(50);
        Offset offset = CommonSound.beside(
                        at("10:00:00:00", listen("one", mic(0, 600).at(8000), talk)),
                        at("10:00:12:09", listen("two", two, talk)))
                .offset()
                .orElseThrow();

        assertThat(offset.basis()).isInstanceOf(Offset.ByBoth.class);
        assertThat(offset.later()).isEqualTo(Duration.ofMillis(12_360));
        assertThat(seconds(offset.apart())).isCloseTo(-0.180, within(0.005));
    }

    /** Ears that hear too little to know each other again must not deny the clock: one in a loud room, one at a fan. */
    @ParameterizedTest(name = "noise {0} dB under the talk")
    @ValueSource(ints = {-3, -6, -12})
    void noise_denies_no_time_code(int noise) {
        Beside beside = CommonSound.beside(
                at("10:00:00:00", listen("one", mic(0, 40).noisy(noise), TALK)),
                at("10:00:12:09", listen("two", mic(12.3456, 40).noisy(noise).like(2), TALK)));
        assertThat(beside.denied()).isEmpty();
        assertThat(beside.offset().map(Offset::later)).contains(Duration.ofMillis(12_360));
    }

    @Test
    void the_same_films_give_the_same_offset_either_way() {
        CommonSound.Listened one = listen("one", mic(0, 40).noisy(6), TALK);
        CommonSound.Listened two = listen("two", mic(8.2, 40).noisy(6).like(2), TALK);

        Offset there = CommonSound.beside(one, two).offset().orElseThrow();
        assertThat(CommonSound.beside(one, two).offset()).contains(there);
        Offset back = CommonSound.beside(two, one).offset().orElseThrow();
        assertThat(seconds(back.later())).isCloseTo(-seconds(there.later()), within(EXACT));
    }

    private static float[] sum(float[] one, float[] two) {
        float[] sum = new float[Math.min(one.length, two.length)];
        for (int i = 0; i < sum.length; i++) {
            sum[i] = one[i] + two[i];
        }
        return sum;
    }
}
