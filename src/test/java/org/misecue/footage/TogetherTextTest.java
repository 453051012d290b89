package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TogetherTextTest {

    private static final Offset.Basis SOUND = new Offset.BySound(11, 12, new BigDecimal("7.88"));

    private static Together together(long laterNanos, long apartMillis, Offset.Basis basis) {
        Offset offset = new Offset(Duration.ofNanos(laterNanos), Duration.ofMillis(apartMillis), basis);
        return new Together(List.of(
                new Together.Pair("footage/main.mp4", "footage/close.mp4", Optional.of(offset)),
                new Together.Pair("footage/close.mp4", "footage/tasting.mp4", Optional.empty())));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12480000000  |  0   | began 12.480 s after footage/main.mp4, by its sound, alike at 11 of 12 places
            -12480400000 |  0   | began 12.480 s before footage/main.mp4, by its sound, alike at 11 of 12 places
            400000       |  0   | began with footage/main.mp4, by its sound, alike at 11 of 12 places
            1000000000   |  -40 | began 1.000 s after footage/main.mp4, by its sound, alike at 11 of 12 places; runs apart 40 ms per hour
            """)
    void a_film_is_told_beside_the_other(long later, long apart, String line) {
        assertThat(TogetherText.lines("footage/close.mp4", together(later, apart, SOUND)))
                .containsExactly(line, "not known with footage/tasting.mp4: neither time code nor sound tells");
    }

    @Test
    void the_other_is_told_the_other_way_round() {
        Together together = together(12_480_000_000L, 0, new Offset.ByTimecode());
        assertThat(TogetherText.lines("footage/main.mp4", together))
                .containsExactly("began 12.480 s before footage/close.mp4, by time code");
        assertThat(TogetherText.lines("footage/alone.mp4", together)).isEmpty();
    }
}
