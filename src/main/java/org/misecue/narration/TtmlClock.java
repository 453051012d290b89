package org.misecue.narration;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Times as TTML writes them: {@code 00:01:05.25}, {@code 00:01:05:06} with frames, {@code 65.25s}, {@code 1631f},
 * {@code 652500t}. By the W3C's TTML1, "Time Value Expressions" and "Time Expression Semantics", from memory.
 *
 * @param rate frames a second, after the multiplier
 * @param counted frames that a second of clock time counts, before it
 * @param subFrames in a frame
 * @param ticks a second
 * @param counting how clock time with frames runs
 */
record TtmlClock(BigDecimal rate, int counted, int subFrames, BigDecimal ticks, Counting counting) {

    /** Frames are counted on the clock of the media, or by a time code that may drop numbers. */
    enum Counting {
        MEDIA,
        SMPTE,
        SMPTE_DROP
    }

    private static final MathContext EXACT_ENOUGH = MathContext.DECIMAL64;
    private static final BigDecimal NANOS = BigDecimal.valueOf(1_000_000_000);
    private static final Pattern CLOCK =
            Pattern.compile("(\\d{2,6}):(\\d{2}):(\\d{2})(?:(\\.\\d{1,12})|:(\\d{2,4})(?:\\.(\\d{1,4}))?)?");
    private static final Pattern OFFSET = Pattern.compile("(\\d{1,12}(?:\\.\\d{1,12})?)(h|ms|m|s|f|t)");
    /** Number names are left out at the start of every minute but each tenth: SMPTE ST 12. */
    private static final int DROPPED = 2;

    /** Not readable is empty; a clock time may have up to 59 minutes and 60 seconds, and fewer frames than a second has. */
    Optional<Duration> time(String expression) {
        Matcher clock = CLOCK.matcher(expression);
        if (clock.matches()) {
            return clock(clock);
        }
        Matcher offset = OFFSET.matcher(expression);
        return offset.matches()
                ? Optional.of(offset(new BigDecimal(offset.group(1)), offset.group(2)))
                : Optional.empty();
    }

    private Optional<Duration> clock(Matcher clock) {
        long hours = Long.parseLong(clock.group(1));
        long minutes = 60 * hours + Long.parseLong(clock.group(2));
        long seconds = 60 * minutes + Long.parseLong(clock.group(3));
        if (Integer.parseInt(clock.group(2)) > 59 || Integer.parseInt(clock.group(3)) > 60) {
            return Optional.empty();
        }
        if (clock.group(5) == null) {
            BigDecimal part = clock.group(4) == null ? BigDecimal.ZERO : new BigDecimal("0" + clock.group(4));
            return Optional.of(duration(BigDecimal.valueOf(seconds).add(part)));
        }
        int frames = Integer.parseInt(clock.group(5));
        int subFrame = clock.group(6) == null ? 0 : Integer.parseInt(clock.group(6));
        if (frames >= counted || subFrame >= subFrames) {
            return Optional.empty();
        }
        BigDecimal frame = BigDecimal.valueOf(frames)
                .add(BigDecimal.valueOf(subFrame).divide(BigDecimal.valueOf(subFrames), EXACT_ENOUGH));
        return Optional.of(duration(
                switch (counting) {
                    case MEDIA -> BigDecimal.valueOf(seconds).add(frame.divide(rate, EXACT_ENOUGH));
                    case SMPTE ->
                        BigDecimal.valueOf(seconds * counted).add(frame).divide(rate, EXACT_ENOUGH);
                    case SMPTE_DROP ->
                        BigDecimal.valueOf(seconds * counted - DROPPED * (minutes - minutes / 10))
                                .add(frame)
                                .divide(rate, EXACT_ENOUGH);
                }));
    }

    private Duration offset(BigDecimal count, String metric) {
        return duration(
                switch (metric) {
                    case "h" -> count.multiply(BigDecimal.valueOf(3600));
                    case "m" -> count.multiply(BigDecimal.valueOf(60));
                    case "ms" -> count.movePointLeft(3);
                    case "f" -> count.divide(rate, EXACT_ENOUGH);
                    case "t" -> count.divide(ticks, EXACT_ENOUGH);
                    default -> count;
                });
    }

    /** What is beyond the longest narration counts as beyond it, whatever it is. */
    private static Duration duration(BigDecimal seconds) {
        BigDecimal most = BigDecimal.valueOf(Clock.LONGEST.toSeconds() + 1);
        return Duration.ofNanos(seconds.min(most)
                .multiply(NANOS)
                .setScale(0, RoundingMode.HALF_EVEN)
                .longValueExact());
    }
}
