package org.misecue.day;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Which works the end of the day hangs on: each of them is held up by another, by people, by equipment or by a break that
 * follows another, down to what begins at a fixed time.
 */
final class CriticalPath {

    private final Project project;
    private final Schedule schedule;
    private final List<Limit.Pause> pauses;

    private CriticalPath(Project project, Schedule schedule) {
        this.project = project;
        this.schedule = schedule;
        this.pauses = project.limits().stream()
                .filter(Limit.Pause.class::isInstance)
                .map(Limit.Pause.class::cast)
                .toList();
    }

    /** The places of the works, from the end backwards by what holds each up. */
    static Set<Integer> of(Project project, Schedule schedule) {
        CriticalPath path = new CriticalPath(project, schedule);
        Deque<Integer> open = new ArrayDeque<>();
        path.places().filter(at -> path.end(at) == schedule.end()).forEach(open::add);
        Set<Integer> critical = new HashSet<>();
        while (!open.isEmpty()) {
            int at = open.remove();
            if (critical.add(at)) {
                path.places()
                        .filter(other -> other != at && path.holdsUp(other, at))
                        .forEach(open::add);
            }
        }
        return critical;
    }

    private IntStream places() {
        return IntStream.range(0, project.works().size());
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
        return byLag
                || (project.works().get(one).minutes() > 0
                        && (byMeans(one, other) || byOven(one, other) || byBreak(one, other)));
    }

    /** One ends when the other begins, or the camera moves just in between. */
    private boolean byMeans(int one, int other) {
        Work first = project.works().get(one);
        Work second = project.works().get(other);
        int gap = start(other) - end(one);
        boolean moves = first.setUp().isPresent()
                && second.setUp().isPresent()
                && !first.setUp().equals(second.setUp());
        return first.takes().keySet().stream().anyMatch(second.takes()::containsKey)
                && (gap == 0 || (moves && gap == project.change()));
    }

    /** One leaves its place in the oven to the other, at once or after the oven has changed its heat. */
    private boolean byOven(int one, int other) {
        Optional<Work.Heat> first = project.works().get(one).heat();
        Optional<Work.Heat> second = project.works().get(other).heat();
        if (first.isEmpty()
                || second.isEmpty()
                || !schedule.ovens().get(one).equals(schedule.ovens().get(other))) {
            return false;
        }
        int heating = first.get().celsius() == second.get().celsius()
                ? 0
                : second.get().heating();
        return start(other) - end(one) == heating;
    }

    /** A break begins when one ends, and ends when the other begins. */
    private boolean byBreak(int one, int other) {
        return project.needsHands(one)
                && project.needsHands(other)
                && IntStream.range(0, pauses.size())
                        .anyMatch(at -> schedule.pauses().get(at) == end(one)
                                && schedule.pauses().get(at) > pauses.get(at).earliest()
                                && schedule.pauses().get(at) + pauses.get(at).minutes() == start(other));
    }
}
