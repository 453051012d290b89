package org.misecue.align;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class WalkTest {

    private static final int STEPS = 5;

    /** Three words that speak for a step as clearly as a time that it states; 0 for words that say nothing. */
    private static Moment about(int step) {
        double[] support = new double[STEPS + 1];
        if (step > 0) {
            support[step] = 6;
        }
        return new Moment(0, 3, 0.5, false, support);
    }

    private static int[] walk(int... about) {
        List<Moment> moments = new ArrayList<>();
        for (int step : about) {
            moments.add(about(step));
        }
        return Walk.best(moments);
    }

    @Test
    void between_words_for_two_steps_it_goes_from_one_to_the_other_once() {
        int[] steps = walk(0, 1, 0, 0, 0, 0, 2, 0);

        assertThat(steps[1]).isEqualTo(1);
        assertThat(steps[6]).isEqualTo(2);
        assertThat(steps).isSorted();
    }

    @Test
    void after_a_look_back_the_work_goes_on_where_it_was() {
        assertThat(walk(1, 2, 2, 3, 3, 1, 1, 1, 3, 4)).containsExactly(1, 2, 2, 3, 3, 1, 1, 1, 3, 4);
    }

    @Test
    void what_is_done_early_does_not_keep_the_steps_before_it_from_coming() {
        assertThat(walk(1, 1, 4, 4, 4, 1, 2, 2, 3, 5)).containsExactly(1, 1, 4, 4, 4, 1, 2, 2, 3, 5);
    }

    @Test
    void one_faint_word_does_not_lead_away() {
        double[] faint = new double[STEPS + 1];
        faint[5] = 1;
        assertThat(Walk.best(List.of(about(2), new Moment(3, 3, 0, false, faint), about(2))))
                .containsExactly(2, 2, 2);
    }

    @Property
    void every_moment_gets_a_step_however_long_somebody_talks(
            @ForAll @Size(min = 1, max = 400) List<@IntRange(max = STEPS) Integer> about) {
        int[] steps = walk(about.stream().mapToInt(step -> step).toArray());
        assertThat(steps).hasSize(about.size());
        assertThat(Arrays.stream(steps)).allMatch(step -> step >= 0 && step <= STEPS);
    }
}
