package org.misecue.day;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Which works of a project come before which, directly or by others between them. */
final class Precedence {

    private final List<BitSet> after = new ArrayList<>();

    private Precedence() {}

    /** @throws IllegalArgumentException if works wait for each other in a circle */
    static Precedence of(Project project) {
        Precedence order = new Precedence();
        int number = project.works().size();
        for (int at = 0; at < number; at++) {
            order.after.add(new BitSet());
        }
        project.lags().forEach(lag -> order.after.get(lag.before()).set(lag.after()));
        for (int middle = 0; middle < number; middle++) {
            for (int from = 0; from < number; from++) {
                if (order.after.get(from).get(middle)) {
                    order.after.get(from).or(order.after.get(middle));
                }
            }
        }
        for (int at = 0; at < number; at++) {
            if (order.after.get(at).get(at)) {
                throw new IllegalArgumentException("work " + at + " waits for itself");
            }
        }
        return order;
    }

    boolean isBefore(int one, int other) {
        return after.get(one).get(other);
    }

    /** Whether one of the works may be the next of them after another. */
    boolean mayBeNext(int one, int next, List<Integer> works) {
        if (isBefore(next, one)) {
            return false;
        }
        return works.stream().noneMatch(between -> isBefore(one, between) && isBefore(between, next));
    }
}
