package org.misecue.day;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Says which presenter and which camera does what, where there are several: whoever has been free longest. */
final class Crew {

    private final Project project;
    private final Schedule schedule;
    private final Map<Integer, List<String>> people = new HashMap<>();

    Crew(Project project, Schedule schedule) {
        this.project = project;
        this.schedule = schedule;
    }

    /** By the places of the works. */
    Map<Integer, List<String>> people() {
        assign(Project.PRESENTER);
        assign(Project.CAMERA);
        return people;
    }

    private void assign(String means) {
        int number = project.means().getOrDefault(means, 1);
        int[] free = new int[number];
        List<Integer> works = IntStream.range(0, project.works().size())
                .filter(at -> project.works().get(at).takes().containsKey(means))
                .boxed()
                .sorted(Comparator.comparing((Integer at) -> schedule.starts().get(at))
                        .thenComparing(at -> at))
                .toList();
        for (int work : works) {
            int one = 0;
            for (int other = 1; other < number; other++) {
                if (free[other] < free[one]) {
                    one = other;
                }
            }
            free[one] = schedule.starts().get(work) + project.works().get(work).minutes();
            String name = number == 1 ? means : means + " " + (one + 1);
            people.computeIfAbsent(work, any -> new ArrayList<>()).add(name);
        }
    }
}
