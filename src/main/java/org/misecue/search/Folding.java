package org.misecue.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Makes one of hits that are nearly the same moment. */
final class Folding {

    /** Two moments of narration nearer than this are one to somebody who looks at the picture. */
    static final Duration NEAR = Duration.ofSeconds(10);

    private Folding() {}

    /** @param hits best first; the best of those that are near stays */
    static List<Hit> fold(List<Hit> hits) {
        List<Hit> kept = new ArrayList<>();
        for (Hit hit : hits) {
            if (kept.stream().noneMatch(better -> isNear(better, hit))) {
                kept.add(hit);
            }
        }
        return kept;
    }

    private static boolean isNear(Hit a, Hit b) {
        return a.kind() == Passage.Kind.NARRATION
                && b.kind() == Passage.Kind.NARRATION
                && a.episode().equals(b.episode())
                && a.source().equals(b.source())
                && a.at().minus(b.at()).abs().compareTo(NEAR) < 0;
    }
}
