package org.misecue.bench;

import java.util.List;

/** The value that so many of a hundred do not exceed. */
final class Percentile {

    private Percentile() {}

    /**
     * By nearest rank.
     *
     * @param sorted the smallest first, at least one
     * @param share from 1 to 100
     */
    static <T> T of(List<T> sorted, int share) {
        return sorted.get((int) Math.ceil(sorted.size() * share / 100.0) - 1);
    }
}
