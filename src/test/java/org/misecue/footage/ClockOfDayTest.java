package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Frame numbers by the rules of SMPTE ST 12-1 (from memory): at 29.97 drop-frame the labels ;00 and ;01 are left out each minute
 * but the tenth, so that ten minutes are 17982 frames; a frame there takes 1001/30000 s.
 */
class ClockOfDayTest {

    private static final Map<String, FrameRate> RATES = Map.of(
            "24", new FrameRate(24, 1),
            "25", new FrameRate(25, 1),
            "50", new FrameRate(50, 1),
            "23.98", new FrameRate(24000, 1001),
            "29.97", new FrameRate(30000, 1001),
            "59.94", new FrameRate(60000, 1001));

    private static FilmInfo film(String rate, String start, int seconds) {
        FrameRate frames = RATES.getOrDefault(rate, new FrameRate(25, 1));
        return new FilmInfo(
                Duration.ofSeconds(seconds),
                List.of(new Track.Picture("h264", 1920, 1080, frames, false)),
                Optional.of(Timecode.parse(start, frames)));
    }

    private static Optional<Duration> later(FilmInfo first, FilmInfo second) {
        return ClockOfDay.offset(first, second).map(Offset::later);
    }

    @ParameterizedTest(name = "{0} fps {1} for {2} s, {3} fps {4} for {5} s: {6}")
    @CsvSource({
        // the same rate: frames, counted
        "25, 10:00:00:00, 60, 25, 10:00:12:12, 60, 12.480",
        "25, 10:00:12:12, 60, 25, 10:00:00:00, 60, -12.480",
        "25, 10:20:07:03, 60, 25, 10:20:07:03, 60, 0",
        "25, 10:00:00:00, 60, 25, 10:00:59:24, 60, 59.960",
        "25, 10:00:00:00, 60, 25, 10:01:00:00, 60, none",
        "29.97, 10:00:59:29, 60, 29.97, 10:01:00:00, 60, 0.033366667",
        // the labels ;00 and ;01 of the minute are no frames
        "29.97, 10:00:59;29, 60, 29.97, 10:01:00;02, 60, 0.033366667",
        "29.97, 10:00:00;00, 900, 29.97, 10:10:00;00, 900, 599.9994",
        "59.94, 10:00:59;59, 60, 59.94, 10:01:00;04, 60, 0.016683333",
        // without dropping a second of the label takes 1.001 s
        "29.97, 10:00:00:00, 900, 29.97, 10:10:00:00, 900, 600.600",
        "23.98, 10:00:00:00, 900, 29.97, 10:10:00:00, 900, 600.600",
        // other rates on the same clock
        "25, 10:00:00:00, 60, 50, 10:00:01:01, 60, 1.020",
        "24, 10:00:00:00, 60, 25, 10:00:01:05, 60, 1.200",
        "25, 10:00:00:00, 60, 29.97, 10:00:05;00, 60, 5",
        "29.97, 10:00:30;00, 60, 59.94, 10:00:40;30, 60, 10.5005",
        // clocks that run apart since nobody knows when
        "25, 10:00:00:00, 60, 29.97, 10:00:05:00, 60, none",
        "29.97, 10:00:00;00, 60, 29.97, 10:00:05:00, 60, none",
        // midnight
        "25, 23:59:50:00, 60, 25, 00:00:05:05, 60, 15.200",
        "25, 00:00:05:05, 60, 25, 23:59:50:00, 60, -15.200",
        "29.97, 23:59:59;29, 60, 29.97, 00:00:00;00, 60, 0.033366667",
        "29.97, 23:59:59:29, 60, 29.97, 00:00:00:00, 60, 0.033366667",
        // cameras that count what they recorded begin on the full hour
        "25, 01:00:00:00, 60, 25, 01:00:00:00, 60, none",
        "25, 01:00:00:00, 60, 50, 01:00:00:00, 60, none",
        "25, 01:00:00:00, 60, 25, 01:00:02:00, 60, 2",
        // another part of the day
        "25, 10:00:00:00, 60, 25, 14:00:00:00, 60, none"
    })
    void films_lie_as_their_labels_say(
            String rate, String start, int seconds, String rate2, String start2, int seconds2, String expected) {
        Optional<Duration> later = later(film(rate, start, seconds), film(rate2, start2, seconds2));
        if (expected.equals("none")) {
            assertThat(later).isEmpty();
        } else {
            long nanos = Math.round(Double.parseDouble(expected) * 1e9);
            assertThat(later.orElseThrow().toNanos()).isBetween(nanos - 1, nanos + 1);
        }
    }

    @Test
    void a_film_without_time_code_is_left_to_its_sound() {
        FilmInfo with = film("25", "10:00:00:00", 60);
        FilmInfo without = new FilmInfo(with.length(), with.tracks(), Optional.empty());
        assertThat(later(with, without)).isEmpty();
        assertThat(later(without, with)).isEmpty();
    }
}
