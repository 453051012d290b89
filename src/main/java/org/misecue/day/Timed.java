package org.misecue.day;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A day with its schedule: when each task begins and ends.
 *
 * @param day the tasks and the works that they stand for
 * @param schedule of those works
 * @param firstShot the time of minute 0
 */
record Timed(Day day, Schedule schedule, LocalDateTime firstShot) {

    Work work(int at) {
        return day.project().works().get(at);
    }

    Task task(int at) {
        return day.tasks().get(at);
    }

    /** How many tasks there are, those of no length among them. */
    int size() {
        return day.tasks().size();
    }

    /** Minutes after the first shot. */
    int start(int at) {
        return schedule.starts().get(at);
    }

    /** Minutes after the first shot. */
    int end(int at) {
        return start(at) + work(at).minutes();
    }

    LocalDateTime time(int minute) {
        return firstShot.plusMinutes(minute);
    }

    /** The tasks that keep somebody or something busy, in the order of their beginning. */
    List<Integer> taking(String means) {
        return inOrder(IntStream.range(0, size()).filter(at -> work(at).takes().containsKey(means)));
    }

    /** The filmed tasks in the order of their beginning. */
    List<Integer> filmed() {
        return inOrder(IntStream.range(0, size()).filter(at -> work(at).setUp().isPresent()));
    }

    /** What is in an oven or turns its dial, in the order of its beginning. */
    List<Integer> bakes() {
        return inOrder(IntStream.range(0, size()).filter(at -> schedule.ovens().get(at) >= 0));
    }

    private List<Integer> inOrder(IntStream tasks) {
        return tasks.boxed()
                .sorted(Comparator.comparing(this::start).thenComparing(at -> at))
                .toList();
    }
}
