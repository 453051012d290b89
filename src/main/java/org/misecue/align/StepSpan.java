package org.misecue.align;

import java.time.Duration;
import org.misecue.spoken.Token;

/**
 * A stretch of narration, {@code [start, end)}, during which one step is on.
 *
 * @param step from 1; 0 before the method begins
 * @param source the narration file
 */
public record StepSpan(int step, String source, Duration start, Duration end) {

    /** Whether a word is said within the span. */
    public boolean holds(Token word) {
        return source.equals(word.source())
                && start.compareTo(word.at()) <= 0
                && word.at().compareTo(end) < 0;
    }
}
