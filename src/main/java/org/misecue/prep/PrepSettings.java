package org.misecue.prep;

import java.time.LocalDateTime;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Household;
import org.misecue.quantity.Rationals;
import org.misecue.scale.Sets;
import tech.units.indriya.function.RationalNumber;

/**
 * How the mise en place is wanted.
 *
 * @param sets of bowls: one for each take, and the spare ones
 * @param household whose spoons and cups are meant
 * @param ovens that can each have a temperature of its own
 * @param firstShot when the camera rolls first; without it, jobs say how long before and no clock time
 * @param scaleStep the smallest step in grams that the scale shows
 * @param failures whether a little more is weighed of what fails easily
 * @param hero whether the finish is weighed once more for the hero shot
 * @param madeEarlier numbers of the steps whose result is ready before the day
 */
public record PrepSettings(
        Sets sets,
        Household household,
        int ovens,
        Optional<LocalDateTime> firstShot,
        RationalNumber scaleStep,
        boolean failures,
        boolean hero,
        Set<Integer> madeEarlier) {

    /** One take, metric spoons, no clock time, a scale of whole grams, spares, nothing made earlier. */
    public static PrepSettings standard() {
        return new PrepSettings(Sets.ONE, Household.METRIC, 1, Optional.empty(), Rationals.ONE, true, true, Set.of());
    }

    public PrepSettings withTakes(int number) {
        return new PrepSettings(
                new Sets(number, sets.spare()), household, ovens, firstShot, scaleStep, failures, hero, madeEarlier);
    }

    public PrepSettings withHousehold(Household other) {
        return new PrepSettings(sets, other, ovens, firstShot, scaleStep, failures, hero, madeEarlier);
    }

    public PrepSettings withFirstShot(LocalDateTime time) {
        return new PrepSettings(sets, household, ovens, Optional.of(time), scaleStep, failures, hero, madeEarlier);
    }

    public PrepSettings withScaleStep(RationalNumber grams) {
        return new PrepSettings(sets, household, ovens, firstShot, grams, failures, hero, madeEarlier);
    }

    public PrepSettings withSpares(boolean forFailures, boolean forHero) {
        return new PrepSettings(sets, household, ovens, firstShot, scaleStep, forFailures, forHero, madeEarlier);
    }

    public PrepSettings withMadeEarlier(Set<Integer> steps) {
        return new PrepSettings(sets, household, ovens, firstShot, scaleStep, failures, hero, Set.copyOf(steps));
    }

    public PrepSettings withOvens(int number) {
        return new PrepSettings(sets, household, number, firstShot, scaleStep, failures, hero, madeEarlier);
    }
}
