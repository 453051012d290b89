package org.misecue.day;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What the planner works on, and the numbers of the rows of its call sheet: tasks first, then breaks and absences, then
 * the ovens, then the small jobs. They hang on the day's project alone, so that they stay when the day is planned again.
 *
 * @param project the works and what they ask of each other
 * @param tasks what each work is, in the same order
 */
record Day(Project project, List<Task> tasks) {

    /** The number of the first break or absence. */
    int firstRest() {
        return tasks.size() + 1;
    }

    /** The number of the first oven's row. */
    int firstHeat() {
        return firstRest()
                + (int) project.limits().stream()
                        .filter(limit -> limit instanceof Limit.Pause || limit instanceof Limit.Away)
                        .count();
    }

    /** The number of the first small job. */
    int firstJob() {
        return firstHeat() + bakes().size();
    }

    /** The places of what bakes, in the order of the method. */
    List<Integer> bakes() {
        return IntStream.range(0, tasks.size())
                .filter(at -> tasks.get(at).kind() == Entry.Kind.WAIT)
                .filter(at -> tasks.get(at).with().contains(DayBuilder.OVEN))
                .boxed()
                .toList();
    }
}
