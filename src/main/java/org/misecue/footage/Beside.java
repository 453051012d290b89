package org.misecue.footage;

import java.time.Duration;
import java.util.Optional;

/**
 * What is known of how a second film lies to a first.
 *
 * @param offset empty where it is not known whether and how they ran together
 * @param denied how long after the first the second began by time codes that their sound contradicts
 */
public record Beside(Optional<Offset> offset, Optional<Duration> denied) {

    public static final Beside UNKNOWN = new Beside(Optional.empty(), Optional.empty());

    /** A film beside itself. */
    public static final Beside SAME =
            of(Optional.of(new Offset(Duration.ZERO, Duration.ZERO, new Offset.ByTimecode(false))));

    public static Beside of(Optional<Offset> offset) {
        return new Beside(offset, Optional.empty());
    }

    /** The same seen from the second film. */
    public Beside turned() {
        return new Beside(offset.map(Offset::turned), denied.map(Duration::negated));
    }

    /** Whether time codes lay them together, and nothing else bears that out though it was asked. */
    public boolean isByTimecodeAlone() {
        return offset.map(Offset::basis)
                .filter(new Offset.ByTimecode(true)::equals)
                .isPresent();
    }
}
