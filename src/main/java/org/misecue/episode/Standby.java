package org.misecue.episode;

import java.util.Set;

/**
 * What stands by on a filming day besides the sets of bowls.
 *
 * @param failures whether a little more is weighed of what fails easily: one more egg
 * @param hero whether the finish of the hero shot is weighed once more
 * @param madeEarlier numbers of the steps whose result is ready before the day
 */
public record Standby(boolean failures, boolean hero, Set<Integer> madeEarlier) {

    /** Spares for both, and nothing made earlier. */
    public static final Standby USUAL = new Standby(true, true, Set.of());
}
