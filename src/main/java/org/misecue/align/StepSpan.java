package org.misecue.align;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.misecue.spoken.Token;

/**
 * A stretch of narration, {@code [start, end)}, during which one step is on.
 *
 * @param step from 1; 0 before the method begins
 * @param source the narration file
 */
public record StepSpan(int step, String source, Duration start, Duration end) {

    /** What is shorter by so many times is only a glimpse. */
    private static final int GLIMPSES = 3;

    /**
     * The first of several visits to a step that is no mere look ahead or back, which is much shorter than the step itself.
     *
     * @return empty where there are no visits
     */
    public static Optional<StepSpan> first(List<StepSpan> visits) {
        Duration longest = visits.stream()
                .map(StepSpan::length)
                .max(Comparator.naturalOrder())
                .orElse(Duration.ZERO);
        return visits.stream()
                .filter(visit -> visit.length().multipliedBy(GLIMPSES).compareTo(longest) >= 0)
                .min(Comparator.comparing(StepSpan::start));
    }

    private Duration length() {
        return end.minus(start);
    }

    /** Whether a word is said within the span. */
    public boolean holds(Token word) {
        return source.equals(word.source())
                && start.compareTo(word.at()) <= 0
                && word.at().compareTo(end) < 0;
    }
}
