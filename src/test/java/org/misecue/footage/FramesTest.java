package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

class FramesTest {

    private static final FrameRate PAL = new FrameRate(25, 1);

    @TempDir
    Path folder;

    private static SortedSet<Duration> millis(long... millis) {
        return LongStream.of(millis)
                .mapToObj(Duration::ofMillis)
                .collect(java.util.stream.Collectors.toCollection(TreeSet::new));
    }

    /** Read off the eight bars. */
    private static int number(Rgb picture) {
        int number = 0;
        for (int bar = 0; bar < 8; bar++) {
            int x = (2 * bar + 1) * picture.width() / 16;
            int green = picture.pixels()[3 * (picture.height() / 2 * picture.width() + x) + 1] & 0xff;
            number = number << 1 | green >> 7;
        }
        return number;
    }

    private static List<Integer> numbers(Path film, SortedSet<Duration> moments) {
        List<Integer> numbers = new ArrayList<>();
        assertThat(Frames.each(film, moments, 160, (at, picture) -> numbers.add(number(picture))))
                .isTrue();
        return numbers;
    }

    /** A key frame comes every 12th time, so that some ways lead over many of them, and some over none. */
    @ParameterizedTest
    @CsvSource({"mp4, 0", "mkv, 0", "mp4, 2000", "mkv, 3000"})
    void frames_near_and_far_are_those_on_screen(String ending, long late) {
        Path film = TestFilm.write(
                folder.resolve("film." + ending),
                250,
                PAL,
                false,
                number -> 1000 * late + 40_000L * number,
                recorder -> {});
        SortedSet<Duration> moments = millis(20, 60, 460, 500, 1220, 1260, 1300, 4820, 5780, 5820, 9500, 9980, 20_000);
        List<Integer> expected = moments.stream()
                .map(at -> (int) Math.min(249, at.toMillis() / 40))
                .toList();
        assertThat(numbers(film, moments)).isEqualTo(expected);
    }

    @Test
    void every_moment_alone_gives_the_same_as_all_together() {
        Path film = TestFilm.even(folder.resolve("film.mp4"), 200, new FrameRate(30000, 1001));
        SortedSet<Duration> all =
                millis(LongStream.range(0, 60).map(i -> 111 * i).toArray());
        List<Integer> single = all.stream()
                .flatMap(at -> numbers(film, new TreeSet<>(List.of(at))).stream())
                .toList();
        assertThat(numbers(film, all)).isEqualTo(single);
    }

    @Test
    void whoever_takes_may_stop() {
        Path film = TestFilm.even(folder.resolve("film.mp4"), 50, PAL);
        List<Duration> taken = new ArrayList<>();
        boolean whole = Frames.each(film, millis(0, 400, 800, 1200), 80, (at, picture) -> {
            taken.add(at);
            assertThat(picture.width()).isEqualTo(80);
            return taken.size() < 2;
        });
        assertThat(whole).isFalse();
        assertThat(taken).hasSize(2);
    }

    @Test
    void a_film_without_a_picture_is_refused() {
        Path sound = new TestSound(1).sine(1, 440, -20).wav(folder.resolve("sound.wav"));
        assertThatThrownBy(() -> Frames.each(sound, millis(0), 80, (at, picture) -> true))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("the film has sound but no picture");
    }
}
