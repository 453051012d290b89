package org.misecue.prep;

import java.time.LocalDateTime;
import java.util.Optional;
import org.misecue.quantity.Household;
import org.misecue.scale.Sets;

/**
 * How the mise en place is wanted.
 *
 * @param sets of bowls: one for each take, and the spare ones
 * @param household whose spoons and cups are meant
 * @param ovens that can each have a temperature of its own
 * @param firstShot when the camera rolls first; without it, jobs say how long before and no clock time
 */
public record PrepSettings(Sets sets, Household household, int ovens, Optional<LocalDateTime> firstShot) {

    /** One take, metric spoons, no clock time. */
    public static PrepSettings standard() {
        return new PrepSettings(Sets.ONE, Household.METRIC, 1, Optional.empty());
    }

    public PrepSettings withTakes(int number) {
        return new PrepSettings(new Sets(number, sets.spare()), household, ovens, firstShot);
    }

    public PrepSettings withHousehold(Household other) {
        return new PrepSettings(sets, other, ovens, firstShot);
    }

    public PrepSettings withFirstShot(LocalDateTime time) {
        return new PrepSettings(sets, household, ovens, Optional.of(time));
    }

    public PrepSettings withOvens(int number) {
        return new PrepSettings(sets, household, number, firstShot);
    }
}
