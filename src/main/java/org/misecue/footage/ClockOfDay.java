package org.misecue.footage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Films laid side by side by their time codes, as the clock of the day that all cameras were set to.
 *
 * <p>At whole rates a second of the label is a second of the day, and nearly so in drop-frame counting, which is 2.6 frames
 * a day off; counting without dropping at 30000/1001 and its like takes 1.001 s for each (SMPTE ST 12, from memory). Labels
 * of the two sorts drift apart from the moment at which they were set, which nobody wrote down: such films are not laid
 * together.
 */
public final class ClockOfDay {

    private static final BigDecimal NANOS = BigDecimal.valueOf(1_000_000_000);
    private static final Duration DAY = Duration.ofDays(1);

    private ClockOfDay() {}

    /** How the second film lies to the first; empty where their time codes do not say that both ran at one time. */
    public static Optional<Offset> offset(FilmInfo first, FilmInfo second) {
        return later(first, second).map(later -> new Offset(later, Duration.ZERO, new Offset.ByTimecode(false)));
    }

    private static Optional<Duration> later(FilmInfo first, FilmInfo second) {
        return first.starts().flatMap(one -> second.starts()
                .filter(two -> isSlow(one) == isSlow(two) && !(isTally(one) && isTally(two)))
                .flatMap(two -> later(one, two)
                        .filter(later -> later.compareTo(first.length()) < 0
                                && later.negated().compareTo(second.length()) < 0)
                        .min(Comparator.comparing(Duration::abs))));
    }

    /** On the same day, and across midnight either way. */
    private static Stream<Duration> later(Timecode one, Timecode two) {
        boolean alike = one.rate().equals(two.rate()) && one.dropFrame() == two.dropFrame();
        boolean byFrames = alike || isSlow(one);
        Duration apart = byFrames
                ? span(two.frame(), two.rate()).minus(span(one.frame(), one.rate()))
                : two.asClock().minus(one.asClock());
        Duration day = byFrames ? one.day() : DAY;
        return LongStream.rangeClosed(-1, 1).mapToObj(days -> apart.plus(day.multipliedBy(days)));
    }

    /** Cameras that count what they have recorded begin on the full hour; two of those tell nothing of each other. */
    private static boolean isTally(Timecode start) {
        return start.toString().matches("\\d\\d:00:00[:;]00");
    }

    private static boolean isSlow(Timecode start) {
        FrameRate rate = start.rate();
        return rate.frames() != rate.counted() * rate.seconds() && !start.dropFrame();
    }

    private static Duration span(long frames, FrameRate rate) {
        BigDecimal nanos = BigDecimal.valueOf(frames)
                .multiply(BigDecimal.valueOf(rate.seconds()))
                .multiply(NANOS)
                .divide(BigDecimal.valueOf(rate.frames()), 0, RoundingMode.HALF_EVEN);
        return Duration.ofNanos(nanos.longValueExact());
    }
}
