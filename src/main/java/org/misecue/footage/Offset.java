package org.misecue.footage;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;

/**
 * How the clocks of two films that ran together lie to one another.
 *
 * @param later how long after the first film's first frame the second's was taken; negative where it was taken before
 * @param apart by how much the first clock gains on the second in an hour of the second; zero where nothing was noticed
 * @param basis what tells so
 */
public record Offset(Duration later, Duration apart, Basis basis) {

    private static final BigDecimal HOUR = new BigDecimal("3600000000000");

    /** What two films are brought together by. */
    public sealed interface Basis {}

    /**
     * The clock of the day, which both cameras wrote.
     *
     * @param asked whether their sound was asked as well, and could not tell
     */
    public record ByTimecode(boolean asked) implements Basis {}

    /**
     * The clock of the day, with which the sound agrees.
     *
     * @param alike at how many places both heard the same
     * @param tried how many places were listened to
     */
    public record ByBoth(int alike, int tried) implements Basis {}

    /**
     * What both heard.
     *
     * @param alike at how many places both heard the same
     * @param tried how many places, spread over the time in which both ran, were listened to
     * @param clearness how far the best offset stands out: its strength over that of the next best one
     */
    public record BySound(int alike, int tried, BigDecimal clearness) implements Basis {}

    /** Found by sound, and to the frame as time codes have it. */
    Offset startingAt(Duration byTimecode) {
        Basis both = basis instanceof BySound sound ? new ByBoth(sound.alike(), sound.tried()) : basis;
        return new Offset(byTimecode, apart, both);
    }

    /** The same seen from the second film. */
    public Offset turned() {
        return new Offset(
                later.negated(),
                nanos(HOUR.divide(pace(), MathContext.DECIMAL64).subtract(HOUR)),
                basis);
    }

    /** What the second film's clock shows when the first's shows a time. */
    public Duration inSecond(Duration inFirst) {
        BigDecimal gone = nanos(inFirst.minus(beginsInFirst())).divide(pace(), MathContext.DECIMAL64);
        return beginsInSecond().plus(nanos(gone));
    }

    /** Where both begin to run, on the first clock. */
    private Duration beginsInFirst() {
        return later.isNegative() ? Duration.ZERO : later;
    }

    private Duration beginsInSecond() {
        return later.isNegative() ? later.negated() : Duration.ZERO;
    }

    /** How much of the first clock goes by in one of the second. */
    private BigDecimal pace() {
        return HOUR.add(nanos(apart)).divide(HOUR, MathContext.DECIMAL64);
    }

    private static BigDecimal nanos(Duration time) {
        return BigDecimal.valueOf(time.toNanos());
    }

    private static Duration nanos(BigDecimal count) {
        return Duration.ofNanos(count.setScale(0, RoundingMode.HALF_EVEN).longValueExact());
    }
}
