package org.misecue.footage;

import java.time.Duration;

/** A stretch of sound, {@code [from, to)} on the film's clock, in which no channel is louder than a level. */
public record Silence(Duration from, Duration to) {

    public Duration length() {
        return to.minus(from);
    }
}
