package org.misecue.recipe;

import java.time.Duration;
import java.util.List;

/**
 * A stretch of a step: hands at work, then the time that follows by itself. "Whip the cream and chill for an hour, then
 * spread it over the cake" has two.
 *
 * @param step the step's number
 * @param turn from 1 within its step
 * @param text the words of the step that it covers
 * @param uses what goes in
 * @param techniques what is done, as keys of the shot templates
 * @param handsOn somebody is busy
 * @param waits one after the other, once the hands have done
 */
public record Stretch(
        int step, int turn, String text, List<Use> uses, List<String> techniques, Duration handsOn, List<Wait> waits) {

    /** How long it waits at the longest. */
    public Duration waiting() {
        return waits.stream().map(Wait::most).reduce(Duration.ZERO, Duration::plus);
    }
}
