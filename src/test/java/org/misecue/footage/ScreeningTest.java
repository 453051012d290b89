package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.notice.BadInput;

class ScreeningTest {

    private static final FrameRate PAL = new FrameRate(25, 1);
    private static final Duration FIFTH = Duration.ofMillis(190);

    @TempDir
    Path folder;

    private static List<Long> times(Path film) {
        List<Long> times = new ArrayList<>();
        try (Screening screening = Screening.open(film, FIFTH, 80)) {
            while (screening.next()) {
                times.add(screening.at().toMillis());
            }
        }
        return times;
    }

    @Test
    void five_frames_of_each_second_are_shown() {
        assertThat(times(TestFilm.even(folder.resolve("film.mp4"), 26, PAL)))
                .containsExactly(0L, 200L, 400L, 600L, 800L, 1000L);
    }

    @Test
    void frames_of_uneven_length_come_at_their_times() {
        Path film = TestFilm.write(
                folder.resolve("film.mp4"), 8, PAL, false, number -> number * number * 20_000L, recorder -> {});

        assertThat(times(film)).containsExactly(0L, 200L, 520L, 720L, 1000L);
    }

    @Test
    void small_and_whole_pictures_show_the_same_frame() {
        Path film = TestFilm.even(folder.resolve("film.mp4"), 20, PAL);
        try (Screening screening = Screening.open(film, FIFTH, 80)) {
            screening.next();
            screening.next();
            Grey small = screening.small();
            Grey whole = screening.whole();

            assertThat(List.of(small.width(), small.height())).containsExactly(80, 48);
            assertThat(List.of(whole.width(), whole.height())).containsExactly(TestFilm.WIDTH, TestFilm.HEIGHT);
            // The fifth frame shows 00000101 as bars.
            assertThat(whole.at(110, 48)).isGreaterThan(200);
            assertThat(whole.at(130, 48)).isLessThan(55);
            assertThat(small.at(55, 24)).isGreaterThan(200);
            assertThat(small.at(65, 24)).isLessThan(55);
        }
    }

    @Test
    void a_picture_held_upright_stands_upright() {
        Path film = TestFilm.write(
                folder.resolve("film.mp4"),
                3,
                PAL,
                false,
                number -> TestFilm.micros(PAL, number),
                recorder -> recorder.setDisplayRotation(90));
        try (Screening screening = Screening.open(film, FIFTH, 80)) {
            screening.next();

            assertThat(screening.whole().height()).isEqualTo(TestFilm.WIDTH);
            assertThat(screening.small().height()).isEqualTo(80);
        }
    }

    @Test
    void ten_bits_a_colour_are_seen_as_eight() {
        Path film = TestFilm.write(
                folder.resolve("film.mkv"), 20, PAL, false, number -> TestFilm.micros(PAL, number), recorder -> {
                    recorder.setVideoCodec(avcodec.AV_CODEC_ID_AV1);
                    recorder.setVideoCodecName("libsvtav1");
                    recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P10LE);
                });
        try (Screening screening = Screening.open(film, FIFTH, 80)) {
            screening.next();
            screening.next();

            assertThat(screening.whole().at(110, 48)).isGreaterThan(200);
            assertThat(screening.whole().at(130, 48)).isLessThan(55);
        }
    }

    @Test
    void a_recording_of_sound_has_nothing_to_show() {
        Path film = TestFilm.even(folder.resolve("sound.mp4"), 0, PAL);

        assertThatThrownBy(() -> Screening.open(film, FIFTH, 80))
                .isInstanceOf(BadInput.class)
                .hasMessage(
                        film + ": the film has sound but no picture; name a film with a picture to read what it shows");
    }
}
