package org.misecue.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Says which presenter and which camera does what, where there are several: whoever has been free longest. */
final class Crew {

    private final Timed timed;
    private final Map<Integer, List<String>> people = new HashMap<>();

    /** A stretch of time that one of them is taken; of nobody's work where the place is below 0. */
    private record Taken(int work, int from, int to) {}

    Crew(Timed timed) {
        this.timed = timed;
    }

    /** "presenter", or "presenter 1", "presenter 2". */
    static List<String> names(String means, Project project) {
        int number = project.means().getOrDefault(means, 1);
        return number == 1
                ? List.of(means)
                : IntStream.rangeClosed(1, number)
                        .mapToObj(one -> means + " " + one)
                        .toList();
    }

    /** By the places of the works. */
    Map<Integer, List<String>> people() {
        assign(Project.PRESENTER);
        assign(Project.CAMERA);
        return people;
    }

    private void assign(String means) {
        List<String> names = names(means, timed.day().project());
        int[] free = new int[names.size()];
        List<Taken> taken = Stream.concat(works(means), away(means))
                .sorted(Comparator.comparing(Taken::from).thenComparing(Taken::work))
                .toList();
        for (Taken next : taken) {
            int one = 0;
            for (int other = 1; other < free.length; other++) {
                if (free[other] < free[one]) {
                    one = other;
                }
            }
            free[one] = next.to();
            if (next.work() >= 0) {
                people.computeIfAbsent(next.work(), any -> new ArrayList<>()).add(names.get(one));
            }
        }
    }

    private Stream<Taken> works(String means) {
        return timed.taking(means).stream().map(at -> new Taken(at, timed.start(at), timed.end(at)));
    }

    private Stream<Taken> away(String means) {
        return timed.day().project().limits().stream()
                .filter(Limit.Away.class::isInstance)
                .map(Limit.Away.class::cast)
                .filter(away -> away.means().equals(means))
                .map(away -> new Taken(-1, away.from(), away.to()));
    }
}
