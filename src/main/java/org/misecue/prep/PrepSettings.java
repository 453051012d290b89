package org.misecue.prep;

import java.time.LocalDateTime;
import java.util.Optional;
import org.misecue.quantity.Household;

/**
 * How the mise en place is wanted.
 *
 * @param takes sets of bowls, 1 to 20
 * @param household whose spoons and cups are meant
 * @param firstShot when the camera rolls first; without it, jobs say how long before and no clock time
 */
public record PrepSettings(int takes, Household household, Optional<LocalDateTime> firstShot) {

    private static final int MOST_TAKES = 20;

    public PrepSettings {
        if (takes < 1 || takes > MOST_TAKES) {
            throw new IllegalArgumentException("takes is " + takes + " and must be 1 to " + MOST_TAKES);
        }
    }

    /** One take, metric spoons, no clock time. */
    public static PrepSettings standard() {
        return new PrepSettings(1, Household.METRIC, Optional.empty());
    }

    public PrepSettings withTakes(int number) {
        return new PrepSettings(number, household, firstShot);
    }

    public PrepSettings withHousehold(Household other) {
        return new PrepSettings(takes, other, firstShot);
    }

    public PrepSettings withFirstShot(LocalDateTime time) {
        return new PrepSettings(takes, household, Optional.of(time));
    }
}
