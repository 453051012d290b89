package org.misecue.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Gathers hits, best first, and makes one of those that are nearly the same moment. */
final class Folding {

    /** Two moments of narration nearer than this are one to somebody who looks at the picture. */
    static final Duration NEAR = Duration.ofSeconds(10);

    private final int limit;
    private final List<Hit> kept = new ArrayList<>();

    Folding(int limit) {
        this.limit = limit;
    }

    /** The best of those that are near stays. */
    void add(Hit hit) {
        if (!isFull() && kept.stream().noneMatch(better -> isNear(better, hit))) {
            kept.add(hit);
        }
    }

    int limit() {
        return limit;
    }

    /** What is added now can be no better. */
    double leastScore() {
        return kept.isEmpty() ? Double.MAX_VALUE : kept.get(kept.size() - 1).score();
    }

    boolean isEmpty() {
        return kept.isEmpty();
    }

    boolean isFull() {
        return kept.size() == limit;
    }

    List<Hit> hits() {
        return List.copyOf(kept);
    }

    private static boolean isNear(Hit a, Hit b) {
        return a.kind() == Passage.Kind.NARRATION
                && b.kind() == Passage.Kind.NARRATION
                && a.episode().equals(b.episode())
                && a.source().equals(b.source())
                && a.at().minus(b.at()).abs().compareTo(NEAR) < 0;
    }
}
