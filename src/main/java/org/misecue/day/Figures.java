package org.misecue.day;

import java.util.List;
import java.util.stream.IntStream;

/** What a day comes to: how often the camera moves and how long the presenter stands idle. */
final class Figures {

    private final Timed timed;
    private final int presenters;

    Figures(Timed timed, int presenters) {
        this.timed = timed;
        this.presenters = presenters;
    }

    /** How often camera and lights move to another set-up. */
    int changes() {
        List<Integer> filmed = timed.filmed();
        return (int) IntStream.range(1, filmed.size())
                .filter(at -> !timed.work(filmed.get(at))
                        .setUp()
                        .equals(timed.work(filmed.get(at - 1)).setUp()))
                .count();
    }

    /** Minutes between the first shot and the last hand in which a presenter has nothing to do; a break is no idleness. */
    int idle() {
        List<Integer> hands = timed.taking(Project.PRESENTER);
        int last = hands.stream().mapToInt(timed::end).max().orElse(0);
        int busy = hands.stream().mapToInt(at -> timed.work(at).minutes()).sum();
        return Math.max(0, last * presenters - busy - pauses(last) * presenters - away(last));
    }

    private int pauses(int last) {
        List<Limit.Pause> pauses = timed.day().project().limits().stream()
                .filter(Limit.Pause.class::isInstance)
                .map(Limit.Pause.class::cast)
                .toList();
        return IntStream.range(0, pauses.size())
                .filter(at -> timed.schedule().pauses().get(at) >= 0)
                .map(at -> within(
                        timed.schedule().pauses().get(at),
                        timed.schedule().pauses().get(at) + pauses.get(at).minutes(),
                        last))
                .sum();
    }

    private int away(int last) {
        return timed.day().project().limits().stream()
                .filter(Limit.Away.class::isInstance)
                .map(Limit.Away.class::cast)
                .filter(away -> away.means().equals(Project.PRESENTER))
                .mapToInt(away -> within(away.from(), away.to(), last))
                .sum();
    }

    private static int within(int from, int to, int last) {
        return Math.max(0, Math.min(to, last) - Math.max(0, from));
    }
}
