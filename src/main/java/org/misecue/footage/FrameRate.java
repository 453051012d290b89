package org.misecue.footage;

import java.math.BigInteger;
import java.time.Duration;

/**
 * Frames per second, exact: 25 is 25/1, 29.97 is 30000/1001.
 *
 * @param frames above 0
 * @param seconds above 0; so many frames take so many seconds; in lowest terms
 */
public record FrameRate(int frames, int seconds) {

    private static final BigInteger NANOS = BigInteger.valueOf(1_000_000_000);

    public FrameRate {
        if (frames <= 0 || seconds <= 0) {
            throw new IllegalArgumentException("a frame rate is above 0, not " + frames + "/" + seconds);
        }
        int divisor =
                BigInteger.valueOf(frames).gcd(BigInteger.valueOf(seconds)).intValue();
        frames /= divisor;
        seconds /= divisor;
    }

    /** The whole number of frames that a time code counts in each of its seconds: 30 for 29.97. */
    public int counted() {
        return Math.toIntExact(Math.round((double) frames / seconds));
    }

    /** When a frame begins, rounded up to the next nanosecond, so that {@link #frameAt} gives the same frame back. */
    public Duration startOf(long frame) {
        BigInteger[] parts = BigInteger.valueOf(frame)
                .multiply(BigInteger.valueOf(seconds))
                .multiply(NANOS)
                .add(BigInteger.valueOf(frames - 1L))
                .divide(BigInteger.valueOf(frames))
                .divideAndRemainder(NANOS);
        return Duration.ofSeconds(parts[0].longValueExact(), parts[1].longValueExact());
    }

    /** The frame, counted from 0, that is on screen at a time of 0 or later. */
    public long frameAt(Duration at) {
        BigInteger nanos = BigInteger.valueOf(at.getSeconds()).multiply(NANOS).add(BigInteger.valueOf(at.getNano()));
        return nanos.multiply(BigInteger.valueOf(frames))
                .divide(NANOS.multiply(BigInteger.valueOf(seconds)))
                .longValueExact();
    }

    /** {@code 25}, or {@code 30000/1001} where it is no whole number. */
    @Override
    public String toString() {
        return seconds == 1 ? Integer.toString(frames) : frames + "/" + seconds;
    }
}
