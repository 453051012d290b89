package org.misecue.footage;

import java.math.BigDecimal;
import java.time.Duration;

/**
 * What counts as silence.
 *
 * @param below no sample is louder, in dBFS; negative
 * @param least how long it lasts at least; above zero
 */
public record Hush(BigDecimal below, Duration least) {

    /** A quiet room with a refrigerator, and a pause that viewers notice. Common practice, no source. */
    public static final Hush USUAL = new Hush(BigDecimal.valueOf(-50), Duration.ofSeconds(2));

    public Hush {
        if (below.signum() >= 0 || least.isNegative() || least.isZero()) {
            throw new IllegalArgumentException("silence is below 0 dBFS and lasts: " + below + ", " + least);
        }
    }
}
