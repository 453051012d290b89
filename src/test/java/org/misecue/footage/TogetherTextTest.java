package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class TogetherTextTest {

    private static final Offset.Basis SOUND = new Offset.BySound(11, 12, new BigDecimal("7.88"));

    private static final Beside SAID = new Beside(Optional.empty(), Optional.of(Duration.ofSeconds(-2)));

    private static Beside beside(long laterNanos, long apartMillis, Offset.Basis basis) {
        return Beside.of(Optional.of(new Offset(Duration.ofNanos(laterNanos), Duration.ofMillis(apartMillis), basis)));
    }

    private static Together together(Beside beside) {
        return new Together(List.of(
                new Together.Pair("footage/main.mp4", "footage/close.mp4", beside),
                new Together.Pair("footage/close.mp4", "footage/tasting.mp4", Beside.UNKNOWN)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12480000000  |  0   | began 12.480 s after footage/main.mp4, by its sound, alike at 11 of 12 places
            -12480400000 |  0   | began 12.480 s before footage/main.mp4, by its sound, alike at 11 of 12 places
            400000       |  0   | began with footage/main.mp4, by its sound, alike at 11 of 12 places
            1000000000   |  -40 | began 1.000 s after footage/main.mp4, by its sound, alike at 11 of 12 places; runs apart 40 ms per hour
            """)
    void a_film_is_told_beside_the_other(long later, long apart, String line) {
        assertThat(TogetherText.lines("footage/close.mp4", together(beside(later, apart, SOUND))))
                .containsExactly(line, "not known with footage/tasting.mp4: neither time code nor sound tells");
    }

    static Stream<Arguments> what_the_sound_says_to_time_codes_is_told() {
        Offset bySound = new Offset(Duration.ofSeconds(3), Duration.ZERO, SOUND);
        return Stream.of(
                Arguments.of(
                        beside(0, 40, new Offset.ByBoth(11, 12)),
                        "began with footage/main.mp4, by time code, and its sound agrees at 11 of 12 places;"
                                + " runs apart 40 ms per hour"),
                Arguments.of(
                        beside(0, 0, new Offset.ByTimecode(true)),
                        "began with footage/main.mp4, by time code alone: its sound cannot tell"),
                Arguments.of(
                        SAID,
                        "not laid together with footage/main.mp4: by time code it began 2.000 s before it,"
                                + " but the two sound different"),
                Arguments.of(
                        new Beside(Optional.of(bySound), SAID.denied()),
                        "began 3.000 s after footage/main.mp4, by its sound, alike at 11 of 12 places;"
                                + " by time code it began 2.000 s before it, which its sound denies"));
    }

    @ParameterizedTest
    @MethodSource
    void what_the_sound_says_to_time_codes_is_told(Beside beside, String line) {
        assertThat(TogetherText.lines("footage/close.mp4", together(beside)))
                .first()
                .isEqualTo(line);
    }

    @Test
    void the_other_is_told_the_other_way_round() {
        Together together = together(beside(12_480_000_000L, 0, new Offset.ByTimecode(false)));
        assertThat(TogetherText.lines("footage/main.mp4", together))
                .containsExactly("began 12.480 s before footage/close.mp4, by time code");
        assertThat(TogetherText.lines("footage/main.mp4", together(SAID)))
                .containsExactly("not laid together with footage/close.mp4: by time code it began 2.000 s after it,"
                        + " but the two sound different");
        assertThat(TogetherText.lines("footage/alone.mp4", together)).isEmpty();
    }
}
