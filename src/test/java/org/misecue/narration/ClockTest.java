package org.misecue.narration;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockTest {

    @ParameterizedTest
    @CsvSource({"0, 0:00", "5, 0:05", "59.999, 0:59", "65, 1:05", "3599, 59:59", "3600, 1:00:00", "36065, 10:01:05"})
    void times_are_shown_in_full_seconds(double seconds, String shown) {
        assertThat(Clock.hms(Duration.ofMillis(Math.round(seconds * 1000)))).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({"0:05, 5000", "00:05, 5000", "75:10, 4510000", "1:05:10, 3910000", "0:05.5, 5500", "' 1:02,25 ', 62250"
    })
    void written_times_are_read(String text, long millis) {
        assertThat(Clock.parse(text)).contains(Duration.ofMillis(millis));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "5", "0:60", "1:60:00", "1:2", "-0:05", "0:05.", "a:bc", "1:2:3:4", "999999:00"})
    void anything_else_is_no_time(String text) {
        assertThat(Clock.parse(text)).isEmpty();
    }

    @Property
    void what_is_shown_reads_back(@ForAll @LongRange(min = 0, max = 300_000_000) long seconds) {
        assertThat(Clock.parse(Clock.hms(Duration.ofSeconds(seconds)))).contains(Duration.ofSeconds(seconds));
    }
}
