package org.misecue.day;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;

/** Which works the end of the day hangs on: each of them is held up by another, by people or by equipment, down to the start. */
final class CriticalPath {

    private final Project project;
    private final Schedule schedule;

    private CriticalPath(Project project, Schedule schedule) {
        this.project = project;
        this.schedule = schedule;
    }

    /** The places of the works, from the end backwards by what holds each up. */
    static Set<Integer> of(Project project, Schedule schedule) {
        CriticalPath path = new CriticalPath(project, schedule);
        Deque<Integer> open = new ArrayDeque<>();
        IntStream.range(0, project.works().size())
                .filter(at -> path.end(at) == schedule.end())
                .forEach(open::add);
        Set<Integer> critical = new HashSet<>();
        while (!open.isEmpty()) {
            int at = open.remove();
            if (critical.add(at)) {
                IntStream.range(0, project.works().size())
                        .filter(other -> other != at && path.holdsUp(other, at))
                        .forEach(open::add);
            }
        }
        return critical;
    }

    private int start(int at) {
        return schedule.starts().get(at);
    }

    private int end(int at) {
        return start(at) + project.works().get(at).minutes();
    }

    private boolean holdsUp(int one, int other) {
        boolean byLag = project.lags().stream()
                .anyMatch(lag -> lag.before() == one && lag.after() == other && end(one) + lag.least() == start(other));
        return byLag || (project.works().get(one).minutes() > 0 && shareMeans(one, other) && meets(one, other));
    }

    /** Whether one ends when the other begins, or the camera moves just in between. */
    private boolean meets(int one, int other) {
        int gap = start(other) - end(one);
        boolean moves = project.works().get(one).setUp().isPresent()
                && project.works().get(other).setUp().isPresent()
                && !project.works()
                        .get(one)
                        .setUp()
                        .equals(project.works().get(other).setUp());
        return gap == 0 || (moves && gap == project.change());
    }

    private boolean shareMeans(int one, int other) {
        Work first = project.works().get(one);
        Work second = project.works().get(other);
        boolean sameOven = schedule.ovens().get(one) >= 0
                && schedule.ovens().get(one).equals(schedule.ovens().get(other));
        return sameOven || first.takes().keySet().stream().anyMatch(second.takes()::containsKey);
    }
}
