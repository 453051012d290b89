package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A shot on its way to the list. Steps, sayings and figures may still join it.
 *
 * @param fed whether something goes in
 */
record Draft(
        int step,
        List<Integer> laterSteps,
        ShotTemplate template,
        Coverage coverage,
        String see,
        String hands,
        List<Integer> bowls,
        List<Saying> sayings,
        String lowerThird,
        int takes,
        List<Hazard> hazards,
        boolean fed) {

    /** The same picture, going on in another step. */
    Draft joinedBy(Draft other) {
        List<Integer> steps = Stream.concat(
                        laterSteps.stream(), Stream.concat(Stream.of(other.step), other.laterSteps.stream()))
                .filter(each -> each != step)
                .distinct()
                .toList();
        List<Saying> said = new ArrayList<>(sayings);
        other.sayings.stream().filter(saying -> !said.contains(saying)).forEach(said::add);
        List<Hazard> care = new ArrayList<>(hazards);
        other.hazards.stream().filter(hazard -> !care.contains(hazard)).forEach(care::add);
        return new Draft(
                step,
                steps,
                template,
                coverage,
                see,
                hands,
                bowls,
                List.copyOf(said),
                lowerThird.isEmpty() ? other.lowerThird : lowerThird,
                Math.max(takes, other.takes),
                List.copyOf(care),
                fed);
    }

    Shot numbered(int number, List<Integer> after) {
        return new Shot(
                number,
                step,
                laterSteps,
                template.technique(),
                coverage.kind(),
                coverage.setup(),
                coverage.camera(),
                see,
                hands,
                bowls,
                coverage.sound(),
                sayings,
                lowerThird,
                takes,
                coverage.oneChance(),
                hazards,
                after);
    }
}
