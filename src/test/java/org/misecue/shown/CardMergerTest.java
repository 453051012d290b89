package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class CardMergerTest {

    private static final Box PLACE = new Box(40, 100, 240, 120);

    private static ReadLine line(String text) {
        return new ReadLine(PLACE, text, false, 90);
    }

    private static Reading reading(int from, int to, ReadLine... lines) {
        return new Reading(Duration.ofSeconds(from), Duration.ofSeconds(to), Arrays.asList(lines));
    }

    private static List<String> cards(Reading... readings) {
        return CardMerger.cards("film.mp4", List.of(readings)).stream()
                .map(card -> card.from().toSeconds() + "-" + card.to().toSeconds() + " "
                        + card.lines().stream()
                                .map(line -> (line.doubtful() ? "?" : "") + line.text())
                                .toList())
                .toList();
    }

    @Test
    void what_is_read_again_at_the_same_place_is_one_card() {
        assertThat(cards(reading(1, 4, line("75 g rye flour")), reading(4, 9, line("75 g rye flour"))))
                .containsExactly("1-9 [75 g rye flour]");
    }

    @Test
    void words_may_vary_and_figures_may_not() {
        assertThat(cards(reading(1, 4, line("75 g rye fIour")), reading(4, 9, line("75 g rye flour"))))
                .hasSize(1);
        assertThat(cards(reading(1, 4, line("75 g rye flour")), reading(4, 9, line("175 g rye flour"))))
                .containsExactly("1-4 [75 g rye flour]", "4-9 [175 g rye flour]");
    }

    @Test
    void a_doubtful_reading_with_other_figures_stays_beside_the_sure_one() {
        assertThat(cards(
                        reading(1, 4, line("Bake 25 min")),
                        reading(4, 9, line("Bake 45 min").doubted())))
                .containsExactly("1-4 [Bake 25 min]", "4-9 [?Bake 45 min]");
    }

    @Test
    void other_figures_at_the_same_place_and_time_make_both_readings_doubtful() {
        assertThat(cards(
                        reading(1, 9, line("Oven, gas mark 3")),
                        reading(1, 9, line("Oven, gas mark 6").doubted())))
                .containsExactly("1-9 [?Oven, gas mark 3]", "1-9 [?Oven, gas mark 6]");
    }

    @Test
    void a_doubtful_reading_that_missed_a_figure_is_the_same_card() {
        assertThat(cards(
                        reading(1, 4, line("2 x 400 g tins plums")),
                        reading(4, 9, line("x 400 g tins plums").doubted())))
                .containsExactly("1-9 [2 x 400 g tins plums]");
    }

    @Test
    void a_card_that_comes_again_later_is_another() {
        assertThat(cards(reading(1, 4, line("Fold")), reading(20, 24, line("Fold"))))
                .containsExactly("1-4 [Fold]", "20-24 [Fold]");
    }

    @Test
    void part_of_a_line_is_no_line_and_other_figures_in_it_are_a_doubt() {
        ReadLine part = new ReadLine(new Box(100, 100, 200, 120), "tbsp honey", false, 90);
        ReadLine wrong = new ReadLine(new Box(100, 100, 200, 120), "4 tbsp", false, 90);

        assertThat(cards(reading(1, 9, line("3½ tbsp honey")), reading(2, 5, part)))
                .containsExactly("1-9 [3½ tbsp honey]");
        assertThat(cards(reading(1, 9, line("3½ tbsp honey")), reading(2, 5, wrong)))
                .containsExactly("1-9 [?3½ tbsp honey]");
    }

    @Test
    void two_texts_at_one_place_stand_one_after_the_other() {
        assertThat(cards(reading(1, 8, line("Whisk the dry mix")), reading(1, 20, line("Cream the butter"))))
                .containsExactly("1-8 [Whisk the dry mix]", "8-20 [Cream the butter]");
    }

    @Test
    void lines_stand_from_top_to_bottom() {
        ReadLine above = line("For the dough").at(new Box(40, 50, 240, 70));

        assertThat(cards(reading(1, 4, line("75 g rye flour"), above)))
                .containsExactly("1-4 [For the dough, 75 g rye flour]");
    }
}
