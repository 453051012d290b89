package org.misecue.prep;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.recipe.Step;

/**
 * When each step begins if the method is filmed in order without a break: hands-on time once per take, waiting once. The
 * filming day proper is planned elsewhere; this is near enough to take butter out of the fridge by.
 */
final class FilmingClock {

    private final Map<Integer, Duration> begins = new HashMap<>();
    private final Map<Integer, Duration> lastBegins = new HashMap<>();
    private final Map<Integer, Duration> ends = new HashMap<>();
    private final Optional<LocalDateTime> firstShot;

    /** @param notWaited steps whose waiting is done by something made earlier */
    FilmingClock(List<Step> steps, int takes, Optional<LocalDateTime> firstShot, Set<Integer> notWaited) {
        this.firstShot = firstShot;
        Duration elapsed = Duration.ZERO;
        for (Step step : steps) {
            begins.put(step.number(), elapsed);
            lastBegins.put(step.number(), elapsed.plus(step.handsOn().multipliedBy(takes - 1L)));
            elapsed = elapsed.plus(step.handsOn().multipliedBy(takes))
                    .plus(notWaited.contains(step.number()) ? Duration.ZERO : step.unattended());
            ends.put(step.number(), elapsed);
        }
    }

    /** From the first shot to the beginning of the step; zero for step 0. */
    Duration begin(int step) {
        return begins.getOrDefault(step, Duration.ZERO);
    }

    /** From the first shot to the moment when the last take of the step begins; zero for step 0. */
    Duration lastBegin(int step) {
        return lastBegins.getOrDefault(step, Duration.ZERO);
    }

    /** From the first shot to the end of the step and of its waiting; zero for step 0. */
    Duration end(int step) {
        return ends.getOrDefault(step, Duration.ZERO);
    }

    /** The latest moment to start something that must be ready when the step begins. */
    Duration startBefore(int step, Duration ahead) {
        return begin(step).minus(ahead);
    }

    Optional<LocalDateTime> clockTime(int step, Duration ahead) {
        return firstShot.map(time -> time.plus(startBefore(step, ahead)));
    }
}
