package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ShortBuffer;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.function.IntToLongFunction;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The clocks of films in Matroska, whose AAC begins with 1024 samples that nobody recorded. */
class MatroskaClockTest {

    private static final FrameRate PAL = new FrameRate(25, 1);

    /** The container counts in thousandths. */
    private static final double A_TICK = 0.001;

    @TempDir
    Path folder;

    private static double seconds(Duration time) {
        return time.toNanos() / 1e9;
    }

    /** A second of silence, then a second's tone. */
    private Path recording(String name, int rate) throws IOException {
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        ShortBuffer sound = ShortBuffer.allocate(2 * rate);
        for (int i = 0; i < 2 * rate; i++) {
            sound.put((short) (i < rate ? 0 : 8000 * Math.sin(2 * Math.PI * 440 * i / rate)));
        }
        Path file = folder.resolve(name);
        try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(file.toFile(), 0, 0, 1)) {
            recorder.setFormat(name.endsWith(".mkv") ? "matroska" : "mp4");
            recorder.setAudioCodec(avcodec.AV_CODEC_ID_AAC);
            recorder.setSampleRate(rate);
            recorder.start();
            recorder.recordSamples(rate, 1, sound.flip());
            recorder.stop();
        }
        return file;
    }

    @ParameterizedTest
    @CsvSource({"talk.mkv, 8000", "talk.mkv, 48000", "talk.mp4, 8000", "talk.mp4, 48000"})
    void a_recording_begins_with_the_first_sound_that_was_recorded(String name, int rate) throws IOException {
        Path file = recording(name, rate);
        Hush hush = new Hush(BigDecimal.valueOf(-50), Duration.ofMillis(300));
        List<Silence> silences = SoundCheck.of(file, hush, at -> true)
                .orElseThrow()
                .get(0)
                .orElseThrow()
                .silences();
        assertThat(silences).hasSize(1);
        assertThat(seconds(silences.get(0).to())).isCloseTo(1, within(A_TICK));
        // The last frame of AAC is filled up.
        assertThat(seconds(Footage.probe(file).length())).isBetween(2.0, 2 + 1024.0 / rate);
    }

    private Path film(String name, boolean sound, IntToLongFunction micros) {
        return TestFilm.write(folder.resolve(name), 50, PAL, sound, micros, recorder -> {});
    }

    @ParameterizedTest(name = "{0}, picture {2} ms after the sound, last picture at {3} s")
    @CsvSource({
        "film.mkv, true, 0, 1.96",
        "film.mkv, false, 0, 1.96",
        "film.mkv, true, 1200, 1.96",
        "film.mkv, true, 0, 10",
        "film.mkv, false, 0, 10",
        "film.mkv, true, 1200, 10",
        "film.mp4, true, 0, 10"
    })
    void a_film_runs_from_its_first_picture_to_its_last(String name, boolean sound, int late, double last)
            throws IOException {
        Path film =
                film(name, sound, number -> 1000L * late + (number == 49 ? Math.round(last * 1e6) : 40_000L * number));

        double end = last + 0.04;
        double heard = sound && last < 2 && late == 0 ? 1024.0 / TestFilm.SAMPLES : 0;
        assertThat(seconds(Footage.probe(film).length())).isBetween(end - A_TICK, end + heard + A_TICK);
        for (int number : new int[] {0, 1, 25, 48, 49}) {
            double at = number == 49 ? last : 0.04 * number;
            Path png = folder.resolve(number + ".png");
            Still.at(film, Duration.ofNanos((long) ((at + 0.02) * 1e9)), png);
            assertThat(TestFilm.numberIn(png)).as("at %s", at).isEqualTo(number);
        }
    }

    /** Sound that was recorded without a picture lies beside a film as it was heard. */
    @Test
    void a_recording_in_matroska_lies_beside_a_film_where_it_was_heard() {
        Take take = new Take(16, 40);
        Path film = take.film(folder.resolve("film.mp4"), 1, 500);
        Path sound = take.recording(folder.resolve("sound.mkv"), 3, 20);
        Offset offset = CommonSound.beside(CommonSoundTest.listen(film), CommonSoundTest.listen(sound))
                .offset()
                .orElseThrow();
        assertThat(seconds(offset.later())).isCloseTo(2, within(2 * A_TICK));
    }
}
