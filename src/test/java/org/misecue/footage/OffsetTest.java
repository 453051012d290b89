package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class OffsetTest {

    private static Offset offset(Duration later, Duration apart) {
        return new Offset(later, apart, new Offset.ByTimecode(false));
    }

    @Test
    void a_moment_of_one_film_is_found_in_the_other() {
        Offset offset = offset(Duration.ofMillis(12_480), Duration.ZERO);
        assertThat(offset.inSecond(Duration.ofSeconds(20))).isEqualTo(Duration.ofMillis(7_520));
        assertThat(offset.inSecond(Duration.ofSeconds(10))).isEqualTo(Duration.ofMillis(-2_480));
        assertThat(offset.turned().inSecond(Duration.ofMillis(7_520))).isEqualTo(Duration.ofSeconds(20));
    }

    @Test
    void what_the_clocks_run_apart_is_counted_from_where_both_run() {
        Offset offset = offset(Duration.ofSeconds(-30), Duration.ofMillis(180));
        assertThat(offset.inSecond(Duration.ZERO)).isEqualTo(Duration.ofSeconds(30));
        assertThat(offset.inSecond(Duration.ofHours(1).plusMillis(180)))
                .isEqualTo(Duration.ofMinutes(60).plusSeconds(30));
    }

    @Property
    void there_and_back_again_is_the_same_moment(
            @ForAll @LongRange(min = -7_200_000, max = 7_200_000) long later,
            @ForAll @LongRange(min = -1800, max = 1800) long apart,
            @ForAll @LongRange(min = 0, max = 7_200_000) long moment) {
        Offset offset = offset(Duration.ofMillis(later), Duration.ofMillis(apart));
        Duration there = offset.inSecond(Duration.ofMillis(moment));
        assertThat(offset.turned().inSecond(there).minusMillis(moment).abs()).isLessThan(Duration.ofNanos(10_000));
    }
}
