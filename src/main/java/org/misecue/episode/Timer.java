package org.misecue.episode;

import java.time.OffsetDateTime;
import java.util.Optional;

/**
 * A timer that somebody started.
 *
 * @param about what it is kept under: that which it is for, in words that stay the same
 * @param what in a few words for whoever hears it
 * @param started when
 * @param ends when it rings
 * @param back when chilled food that came out must be used or back in the fridge; empty where none did
 * @param stopped when somebody stopped it; it is kept until another is stopped, so that this can be taken back
 */
public record Timer(
        String about,
        String what,
        OffsetDateTime started,
        OffsetDateTime ends,
        Optional<OffsetDateTime> back,
        Optional<OffsetDateTime> stopped) {

    /** Whether nobody stopped it; it may have rung. */
    public boolean runs() {
        return stopped.isEmpty();
    }

    Timer with(Optional<OffsetDateTime> nowStopped) {
        return new Timer(about, what, started, ends, back, nowStopped);
    }
}
