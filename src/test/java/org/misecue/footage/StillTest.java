package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.notice.BadInput;

class StillTest {

    private static final FrameRate NTSC = new FrameRate(30000, 1001);

    @TempDir
    static Path folder;

    private static Path film;

    private final Path png = folder.resolve("still.png");

    @BeforeAll
    static void shoot() {
        film = TestFilm.even(folder.resolve("film.mp4"), 60, NTSC);
    }

    @Test
    void the_frame_on_screen_is_the_last_that_has_begun() throws IOException {
        for (int number : new int[] {0, 1, 2, 11, 12, 13, 29, 30, 47, 58, 59}) {
            assertThat(shownAt(NTSC.startOf(number))).as("begin of %d", number).isEqualTo(number);
            assertThat(shownAt(NTSC.startOf(number + 1).minusMillis(1)))
                    .as("end of %d", number)
                    .isEqualTo(number);
        }
    }

    @Test
    void a_moment_rounded_to_thousandths_finds_its_frame() throws IOException {
        for (int number : IntStream.range(0, 20).toArray()) {
            long millis = Math.round(NTSC.startOf(number).toNanos() / 1e6);
            assertThat(shownAt(Duration.ofMillis(millis))).isEqualTo(number);
        }
    }

    @Test
    void frames_of_uneven_length_are_found_as_well() throws IOException {
        Path uneven = TestFilm.write(
                folder.resolve("uneven.mp4"),
                12,
                new FrameRate(25, 1),
                false,
                number -> number * number * 20_000L,
                recorder -> {});

        Still.at(uneven, Duration.ofMillis(20 * 49 + 150), png);

        assertThat(TestFilm.numberIn(png)).isEqualTo(7);
    }

    @Test
    void matroska_is_read_alike() throws IOException {
        Path other = TestFilm.even(folder.resolve("film.mkv"), 30, new FrameRate(25, 1));

        Still.at(other, Duration.ofMillis(840), png);

        assertThat(TestFilm.numberIn(png)).isEqualTo(21);
    }

    @Test
    void a_still_has_the_film_s_size_or_a_smaller_one() throws IOException {
        Still.at(film, Duration.ZERO, png);
        assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(TestFilm.WIDTH);

        Still.small(film, Duration.ofSeconds(1), 80, png);
        assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(80);
        assertThat(ImageIO.read(png.toFile()).getHeight()).isEqualTo(TestFilm.HEIGHT / 2);
        assertThat(TestFilm.numberIn(png)).isEqualTo(29);

        Still.small(film, Duration.ofSeconds(1), 800, png);
        assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(TestFilm.WIDTH);
    }

    @Test
    void a_film_held_sideways_stands_upright() throws IOException {
        Path sideways = TestFilm.write(
                folder.resolve("sideways.mp4"),
                3,
                new FrameRate(25, 1),
                false,
                number -> number * 40_000L,
                recorder -> recorder.setDisplayRotation(180));

        Still.at(sideways, Duration.ZERO, png);
        assertThat(TestFilm.numberIn(png)).isZero();
        Still.at(sideways, Duration.ofMillis(40), png);
        assertThat(TestFilm.numberIn(png)).isEqualTo(0b1000_0000);
    }

    @Test
    void the_same_moment_gives_the_same_bytes() throws IOException {
        Still.at(film, Duration.ofMillis(700), png);
        byte[] before = Files.readAllBytes(png);
        Still.at(film, Duration.ofMillis(700), png);
        assertThat(png).hasBinaryContent(before);
    }

    @Test
    void a_moment_after_the_end_is_refused() {
        assertThatThrownBy(() -> Still.at(film, Duration.ofSeconds(65), png))
                .isInstanceOf(BadInput.class)
                .hasMessage(film + ": the film has no moment 1:05.000, because it lasts 0:02.002;"
                        + " check that narration and film belong together");
    }

    private int shownAt(Duration at) throws IOException {
        Still.at(film, at, png);
        return TestFilm.numberIn(png);
    }
}
