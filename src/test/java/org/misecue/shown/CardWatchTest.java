package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.misecue.footage.Grey;

/** What is given to be read, and when; an eye that reads nothing itself stands in for the recogniser. */
class CardWatchTest {

    private static final int WIDTH = 320;
    private static final int HEIGHT = 180;
    private static final int PER_SECOND = 5;
    private static final Box LINE = new Box(40, 120, 260, 152);

    private final List<Exposure> exposures = new ArrayList<>();

    /** Sees one line, as wide as the strokes are, in whatever it is given. */
    private List<ReadLine> see(Exposure part) {
        exposures.add(part);
        return List.of(new ReadLine(part.whole(), "line " + exposures.size(), false, 90));
    }

    private List<Reading> watch(int pictures, IntFunction<Grey> film, Eye eye) {
        CardWatch watch = new CardWatch(eye, WIDTH, HEIGHT, WIDTH, HEIGHT);
        for (int i = 0; i < pictures; i++) {
            Grey picture = film.apply(i);
            watch.see(at(i), picture, () -> picture);
        }
        return watch.finish(at(pictures));
    }

    private static Duration at(int picture) {
        return Duration.ofMillis(1000L * picture / PER_SECOND);
    }

    private static Grey moving(int picture, String text) {
        return Pictures.drawn(WIDTH, HEIGHT, pen -> {
            Pictures.things(pen, WIDTH, HEIGHT, picture * 23);
            Pictures.text(pen, text, LINE.left(), LINE.bottom() - 8, 26);
        });
    }

    @Test
    void writing_over_a_moving_picture_is_read_once_with_its_times() {
        List<Reading> readings = watch(40, i -> moving(i, i >= 10 && i < 28 ? "175 g rye flour" : ""), this::see);

        assertThat(readings).hasSize(1);
        assertThat(readings.get(0).from()).isBetween(at(9), at(11));
        assertThat(readings.get(0).to()).isBetween(at(27), at(30));
        assertThat(exposures).hasSize(1);
        assertThat(exposures.get(0).pictures()).hasSizeGreaterThan(3);
    }

    @Test
    void a_moving_picture_without_writing_is_never_read() {
        assertThat(watch(60, i -> moving(i, ""), this::see)).isEmpty();
        assertThat(exposures).isEmpty();
    }

    @Test
    void a_figure_that_changes_has_the_line_read_again() {
        List<Reading> readings = watch(50, i -> moving(i, i < 25 ? "175 g rye flour" : "180 g rye flour"), this::see);

        assertThat(readings.size()).isGreaterThan(1);
        assertThat(readings.get(0).to()).isBetween(at(24), at(27));
        assertThat(readings.get(readings.size() - 1).to()).isEqualTo(at(50));
    }

    @Test
    void a_figure_that_vanishes_has_the_line_read_again() {
        List<Reading> readings =
                watch(50, i -> moving(i, i < 25 ? "1750 g rye flour" : "     0 g rye flour"), this::see);

        assertThat(readings.size()).isGreaterThan(1);
    }

    @Test
    void what_stands_still_and_is_no_writing_is_not_looked_at_again_when_a_hand_has_passed() {
        IntFunction<Grey> film = i -> Pictures.drawn(WIDTH, HEIGHT, pen -> {
            Pictures.things(pen, WIDTH, HEIGHT, 0);
            for (int x = 20; x < 300; x += 6) {
                pen.setColor(Color.BLACK);
                pen.fillRect(x, 60, 3, 14);
            }
            if (i % 20 > 14) {
                pen.setColor(Color.GRAY);
                pen.fillOval(100, 20, 120, 120);
            }
        });

        assertThat(watch(100, film, part -> {
                    exposures.add(part);
                    return List.of();
                }))
                .isEmpty();
        assertThat(exposures.size()).isBetween(1, 2);
    }

    @Test
    void a_card_that_comes_back_is_read_again() {
        List<Reading> readings = watch(70, i -> moving(i, i < 20 || i >= 45 ? "175 g rye flour" : ""), this::see);

        assertThat(readings).hasSize(2);
        assertThat(readings.get(1).from()).isBetween(at(44), at(46));
    }

    @Test
    void a_line_that_reaches_the_picture_s_side_may_be_cut_and_is_doubtful() {
        assertThat(doubts(-12)).isNotEmpty().containsOnly(true);
        assertThat(doubts(80)).isNotEmpty().containsOnly(false);
    }

    private List<Boolean> doubts(int x) {
        IntFunction<Grey> film = i -> Pictures.drawn(WIDTH, HEIGHT, pen -> {
            Pictures.things(pen, WIDTH, HEIGHT, i * 23);
            Pictures.text(pen, i < 10 ? "" : "175 g rye", x, 140, 26);
        });
        return watch(40, film, this::see).stream()
                .flatMap(reading -> reading.lines().stream())
                .map(ReadLine::doubtful)
                .toList();
    }

    @Test
    void a_film_of_one_picture_has_no_time_to_be_read() {
        assertThat(watch(1, i -> moving(i, "175 g rye flour"), this::see)).isEmpty();
    }
}
