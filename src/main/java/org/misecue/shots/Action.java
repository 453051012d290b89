package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import org.misecue.prep.Bowl;
import org.misecue.prep.ToHand;
import org.misecue.recipe.Setting;

/**
 * One action of a step with what it needs.
 *
 * @param place where the method tells it, from 0
 * @param end behind the words that tell it
 * @param bowls those that go in, in the order of the method
 * @param loose what goes in without being weighed
 * @param settings figures to be said and shown with it
 */
record Action(ShotTemplate template, int place, int end, List<Bowl> bowls, List<ToHand> loose, List<Setting> settings) {

    static Action of(ShotTemplate template, int place, int end) {
        return new Action(template, place, end, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    }

    boolean isFed() {
        return !bowls.isEmpty() || !loose.isEmpty();
    }

    /** The shots of the template that are filmed, with what goes in or without. */
    List<Coverage> coverage() {
        return template.coverage().stream()
                .filter(shot -> shot.only().allows(isFed()))
                .toList();
    }
}
