package org.misecue.publish;

import java.time.Duration;

/**
 * One entry of the chapter list.
 *
 * @param start whole seconds on the film's clock
 * @param title a few words, in one line
 */
public record Chapter(Duration start, String title) {

    /** "4:05 Fold in the flour", or "1:04:05 …" from the first hour on. */
    @Override
    public String toString() {
        return clock(start) + " " + title;
    }

    static String clock(Duration at) {
        return at.toHours() == 0
                ? "%d:%02d".formatted(at.toMinutes(), at.toSecondsPart())
                : "%d:%02d:%02d".formatted(at.toHours(), at.toMinutesPart(), at.toSecondsPart());
    }
}
