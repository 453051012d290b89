package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

class FootageTest {

    private static final FrameRate NTSC = new FrameRate(30000, 1001);
    private static final FrameRate PAL = new FrameRate(25, 1);

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"25, 1", "24, 1", "50, 1", "30000, 1001", "24000, 1001", "60000, 1001"})
    void the_frame_rate_is_exact(int frames, int seconds) {
        FrameRate rate = new FrameRate(frames, seconds);
        Path film = film("film.mp4", 10, rate, false, recorder -> {});

        assertThat(Footage.probe(film).tracks())
                .containsExactly(new Track.Picture("h264", TestFilm.WIDTH, TestFilm.HEIGHT, rate, false));
    }

    @Test
    void length_and_sound_are_told() {
        FilmInfo info = Footage.probe(TestFilm.even(folder.resolve("film.mp4"), 50, PAL));

        assertThat(info.length()).isEqualTo(Duration.ofSeconds(2));
        assertThat(info.sound()).contains(new Track.Sound("aac", 8000, 1));
        assertThat(info.starts()).isEmpty();
    }

    @Test
    void frames_of_uneven_length_are_told() {
        Path film = TestFilm.write(
                folder.resolve("film.mp4"), 8, PAL, false, number -> number * number * 20_000L, recorder -> {});

        assertThat(Footage.probe(film).picture().orElseThrow().variableRate()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"01:00:00;00, 30000, 1001, true", "10:00:00:00, 25, 1, false"})
    void the_camera_s_time_code_is_read(String label, int frames, int seconds, boolean drops) {
        FrameRate rate = new FrameRate(frames, seconds);
        Path film = film("film.mp4", 5, rate, false, recorder -> recorder.setVideoMetadata("timecode", label));

        assertThat(Footage.probe(film).starts()).contains(Timecode.parse(label, rate));
        assertThat(Footage.probe(film).starts().orElseThrow().dropFrame()).isEqualTo(drops);
    }

    @Test
    void a_picture_held_upright_is_taller_than_wide() {
        Path film = film("film.mp4", 2, PAL, false, recorder -> recorder.setDisplayRotation(90));

        Track.Picture picture = Footage.probe(film).picture().orElseThrow();
        assertThat(List.of(picture.width(), picture.height())).containsExactly(TestFilm.HEIGHT, TestFilm.WIDTH);
    }

    @Test
    void the_name_s_ending_does_not_matter() throws IOException {
        Path film = TestFilm.even(folder.resolve("film.mp4"), 5, PAL);
        Path renamed = Files.move(film, folder.resolve("film.txt"));

        assertThat(Footage.probe(renamed).picture()).isPresent();
    }

    @Test
    void names_with_colons_spaces_and_percent_signs_are_files_all_the_same() {
        Path film = TestFilm.even(folder.resolve("film.mp4"), 5, PAL);
        Path odd = film.resolveSibling("http: take 100%d é.mp4");
        assertThat(film.toFile().renameTo(odd.toFile())).isTrue();

        assertThat(Footage.probe(odd).picture()).isPresent();
    }

    @Test
    void a_recording_without_picture_can_be_probed_but_gives_no_still() {
        Path sound = TestFilm.write(folder.resolve("sound.mp4"), 0, PAL, true, number -> 0, recorder -> {});

        assertThat(Footage.probe(sound).picture()).isEmpty();
        assertThat(Footage.probe(sound).sound()).isPresent();
        assertThatThrownBy(() -> Still.at(sound, Duration.ZERO, folder.resolve("still.png")))
                .isInstanceOf(BadInput.class)
                .hasMessage(sound + ": the film has sound but no picture; name a film with a picture for stills");
    }

    @Test
    void a_film_cut_off_anywhere_is_told_so() throws IOException {
        for (String option : List.of("fflags=+bitexact", "movflags=+faststart")) {
            String[] setting = option.split("=");
            Path film = film("film.mp4", 40, PAL, true, recorder -> recorder.setOption(setting[0], setting[1]));
            byte[] whole = Files.readAllBytes(film);
            for (int percent : new int[] {1, 5, 20, 50, 80, 95, 99}) {
                Path part = folder.resolve("part.mp4");
                Files.write(part, Arrays.copyOf(whole, whole.length * percent / 100));
                assertThatThrownBy(() -> Footage.probe(part))
                        .as("%s %d %%", option, percent)
                        .isInstanceOf(BadInput.class)
                        .hasMessage(part + ": the film breaks off before its end; copy it again from the camera");
            }
        }
    }

    @Test
    void what_is_no_film_is_told_so() throws IOException {
        refused("missing.mp4", null, "there is no such film; check the name in footage/");
        refused("empty.mp4", "", "the film is empty; copy it again from the camera");
        String unreadable = "this is not a film that can be read, or its end is missing; copy it again from the camera";
        refused("text.mp4", "200 g flour\n", unreadable);
        refused("list.mp4", "#EXTM3U\n#EXTINF:1,\nhttp://localhost/film.ts\n#EXT-X-ENDLIST\n", unreadable);
        refused("concat.mp4", "ffconcat version 1.0\nfile other.mp4\n", unreadable);
        refused("captions.mp4", "1\n00:00:00,000 --> 00:00:01,000\nhello\n", unreadable);
    }

    private void refused(String name, @Nullable String content, String sentence) throws IOException {
        Path file = folder.resolve(name);
        if (content != null) {
            Files.writeString(file, content, StandardCharsets.UTF_8);
        }
        assertThatThrownBy(() -> Footage.probe(file))
                .isInstanceOf(BadInput.class)
                .hasMessage(file + ": " + sentence);
    }

    private Path film(String name, int frames, FrameRate rate, boolean sound, Consumer<FFmpegFrameRecorder> settings) {
        return TestFilm.write(
                folder.resolve(name), frames, rate, sound, number -> TestFilm.micros(rate, number), settings);
    }
}
