package org.misecue.day;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The tasks of a day as they are put together, each with its work, and the lags between them. */
final class Works {

    private final List<Task> tasks = new ArrayList<>();
    private final List<Work> works = new ArrayList<>();
    private final List<Lag> lags = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();

    List<Task> tasks() {
        return tasks;
    }

    List<Work> works() {
        return works;
    }

    List<Lag> lags() {
        return lags;
    }

    /** What the ovens ask. */
    List<Limit> limits() {
        return limits;
    }

    /** The place of a new task. */
    int add(Work work, Entry.Kind kind, String what, int step, Filmed filmed, List<String> with) {
        works.add(work);
        tasks.add(new Task(tasks.size() + 1, kind, what, step, filmed.shots(), filmed.setUp(), with));
        return works.size() - 1;
    }

    /** The shots that a task films, and their set-up. */
    record Filmed(List<Integer> shots, String setUp) {
        static final Filmed NOTHING = new Filmed(List.of(), "");
    }

    void lag(Lag lag) {
        lags.add(lag);
    }

    void limit(Limit limit) {
        limits.add(limit);
    }

    /** One after the other. */
    void chain(List<Integer> places) {
        for (int at = 1; at < places.size(); at++) {
            lags.add(Lag.then(places.get(at - 1), places.get(at)));
        }
    }

    /** A task that is not needed keeps its number and takes no time. */
    void drop(int place) {
        works.set(place, Work.NONE);
    }

    boolean isFollowed(int place) {
        return lags.stream().anyMatch(lag -> lag.before() == place);
    }

    /** What nothing follows. */
    List<Integer> ends() {
        return IntStream.range(0, works.size())
                .filter(place -> !isFollowed(place))
                .boxed()
                .toList();
    }
}
