package org.misecue.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * How long an oven is taken by something: from the turning of its dial, or the beginning of a bake, to the end of the
 * bake or of the last of those that it goes on with.
 *
 * @param from the place of the work that it begins with
 * @param to the place of the work that it ends with; may be the same
 * @param heats in degrees Celsius, those in between among them
 */
record Hot(int from, int to, Set<Integer> heats) {

    /** All of a project; each bake is in one of them. */
    static List<Hot> of(Project project, List<Integer> bakes) {
        List<Hot> hot = new ArrayList<>();
        bakes.forEach(bake -> hot.add(new Hot(bake, bake, Set.of(celsius(project, bake)))));
        for (Limit limit : project.limits()) {
            if (limit instanceof Limit.SameOven same) {
                join(hot, same.dial(), same.bake());
            } else if (limit instanceof Limit.GoesOn goesOn) {
                join(hot, goesOn.first(), goesOn.second());
            }
        }
        return hot;
    }

    private static void join(List<Hot> hot, int first, int second) {
        Hot one = hot.stream().filter(each -> each.to == first).findFirst().orElseThrow();
        Hot other = hot.stream().filter(each -> each.from == second).findFirst().orElseThrow();
        Set<Integer> heats = new TreeSet<>(one.heats);
        heats.addAll(other.heats);
        hot.remove(one);
        hot.remove(other);
        hot.add(new Hot(one.from, other.to, heats));
    }

    private static int celsius(Project project, int work) {
        return project.works().get(work).heat().orElseThrow().celsius();
    }

    /** Whether two may be in one oven at the same time, or follow each other at once. */
    boolean sharesHeat(Hot other) {
        return heats.size() == 1 && heats.equals(other.heats);
    }
}
