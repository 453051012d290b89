package org.misecue.prep;

import java.time.Duration;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.recipe.MethodOrder;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Stretch;

/** When a result stands ready before the day: where somebody asks for it, and where nobody can wait so long. */
public final class MadeEarlier {

    /** Shorter waits are not worth a second batch. */
    public static final Duration WORTH_IT = Duration.ofMinutes(30);

    /** What waits so long cannot be waited for within a day of filming; common practice, no source. */
    private static final Duration TOO_LONG = Duration.ofHours(4);

    private MadeEarlier() {}

    /** Whether a stretch waits too long for a day of filming. */
    public static boolean isTooLong(Stretch stretch) {
        return stretch.waiting().compareTo(TOO_LONG) >= 0;
    }

    /** The steps of which something stands ready: those that are wanted, and those that wait too long for a day. */
    public static Set<Integer> steps(Recipe recipe, Set<Integer> wanted) {
        Set<Integer> steps = new TreeSet<>(wanted);
        MethodOrder.of(recipe).stretches().stream()
                .filter(MadeEarlier::isTooLong)
                .forEach(stretch -> steps.add(stretch.step()));
        return steps;
    }

    /**
     * Looks whether the method has the steps that a setting names.
     *
     * @param key of the setting, for the message
     * @throws BadInput at the first that it does not have
     */
    public static void known(Recipe recipe, Collection<Integer> steps, String key) {
        for (int step : steps) {
            if (recipe.steps().stream().noneMatch(known -> known.number() == step)) {
                throw new BadInput(
                        Place.of("episode.yaml"),
                        "%s: the method has no step %d; it has steps 1 to %d."
                                .formatted(key, step, recipe.steps().size()));
            }
        }
    }
}
