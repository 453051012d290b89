package org.misecue.prep;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A state of the dish that stands ready before the camera needs it, so that nobody waits: "one made earlier".
 *
 * @param after the step whose result it is
 * @param state in plain words: "cake, cooled"
 * @param shownIn the step that goes on with it; 0 where it is the last
 * @param steps those that make it, in the order of the method
 * @param bowls a set of its own for those steps; numbers as in the takes
 * @param work hands and waiting in all
 * @param waits how long the camera would wait for it otherwise
 * @param begin when to begin at the latest; empty where the first shot has no time
 */
public record SwapOut(
        int after,
        String state,
        int shownIn,
        List<Integer> steps,
        List<Bowl> bowls,
        Duration work,
        Duration waits,
        Optional<LocalDateTime> begin) {

    /** "ready before step 9", or "ready before the last shots". */
    public String ready() {
        return shownIn == 0 ? "ready before the last shots" : "ready before step " + shownIn;
    }
}
