package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class TimecodeTest {

    @ParameterizedTest
    @CsvFileSource(resources = "timecodes.csv", useHeadersInDisplayName = true)
    void frames_are_counted_as_the_published_values_say(String rate, String counting, long frame, String label) {
        Timecode timecode = new Timecode(rate(rate), "drop".equals(counting), frame);

        assertThat(timecode).hasToString(label);
        assertThat(Timecode.parse(label, rate(rate)).frame()).isEqualTo(timecode.frame());
    }

    // Source: smpte-timecode 1.3.6, run.
    @ParameterizedTest
    @CsvSource({"00:01:00;00", "00:02:00;01"})
    void numbers_that_drop_frame_counting_leaves_out_are_refused(String label) {
        assertThatThrownBy(() -> Timecode.parse(label, rate("30000/1001")))
                .hasMessage("'" + label + "' is left out in drop-frame counting");
    }

    @ParameterizedTest
    @CsvSource({
        "1:00:00:00, 25, '1:00:00:00' is no time code such as 01:00:00:00",
        "00:61:00:00, 25, '00:61:00:00' is no time code such as 01:00:00:00",
        "00:00:00:25, 25, '00:00:00:25' is no time code at 25 frames per second",
        "24:00:00:00, 30000/1001, '24:00:00:00' is no time code at 30000/1001 frames per second",
        "00:00:00;00, 25, 'drop-frame counting is for 30000/1001 and 60000/1001, not 25'",
    })
    void what_is_no_time_code_is_refused(String label, String rate, String message) {
        assertThatThrownBy(() -> Timecode.parse(label, rate(rate)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(message.replace("''", "'"));
    }

    // Calculated: 1001 frames of 30000/1001 last 33.4000333… s.
    @ParameterizedTest
    @CsvSource({
        "30000/1001, 1800, PT60.06S",
        "30000/1001, 17982, PT599.9994S",
        "30000/1001, 107892, PT3599.9964S",
        "30000/1001, 108000, PT3603.6S",
        "25, 1, PT0.04S",
    })
    void frames_begin_at_their_exact_time(String rate, long frame, Duration at) {
        assertThat(rate(rate).startOf(frame)).isEqualTo(at);
        assertThat(rate(rate).frameAt(at)).isEqualTo(frame);
    }

    @ParameterizedTest
    @CsvSource({"01:00:00;00, PT60.06S, 01:01:00;02", "10:00:00;00, PT9.999S, 10:00:09;29"})
    void a_time_added_gives_the_label_of_the_frame_on_screen(String from, Duration later, String label) {
        assertThat(Timecode.parse(from, rate("30000/1001")).plus(later)).hasToString(label);
    }

    @Property
    boolean every_label_reads_back(@ForAll @LongRange(min = 0, max = 5_178_815) long frame, @ForAll boolean fast) {
        FrameRate rate = new FrameRate(fast ? 60000 : 30000, 1001);
        Timecode timecode = new Timecode(rate, true, frame);
        return Timecode.parse(timecode.toString(), rate).equals(timecode);
    }

    @Property
    boolean every_frame_is_on_screen_when_it_begins_and_not_before(
            @ForAll @IntRange(min = 1, max = 120_000) int frames,
            @ForAll @IntRange(min = 1, max = 2_000) int seconds,
            @ForAll @LongRange(min = 1, max = 1_000_000) long frame) {
        FrameRate rate = new FrameRate(frames, seconds);
        Duration at = rate.startOf(frame);
        return rate.frameAt(at) == frame && rate.frameAt(at.minusNanos(1)) == frame - 1;
    }

    private static FrameRate rate(String text) {
        String[] parts = (text + "/1").split("/");
        return new FrameRate(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]));
    }
}
