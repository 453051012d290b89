package org.misecue.day;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * One work begins after another has ended.
 *
 * @param before the place of the one in its project
 * @param after the place of the other
 * @param least minutes between them at least
 * @param most minutes between them at most, where the food does not wait longer
 * @param wish whose wish the upper bound is; empty where there is none to give up
 */
record Lag(int before, int after, int least, OptionalInt most, Optional<String> wish) {

    static Lag then(int before, int after) {
        return new Lag(before, after, 0, OptionalInt.empty(), Optional.empty());
    }

    static Lag within(int before, int after, int most, String wish) {
        return new Lag(before, after, 0, OptionalInt.of(most), Optional.of(wish));
    }
}
