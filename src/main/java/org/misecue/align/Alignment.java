package org.misecue.align;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** The spans of all steps in time order, source by source; a step may have several where the speaker goes back. */
public record Alignment(List<StepSpan> spans) {

    /** The step that is on, or 0 where none is known. */
    public int stepAt(String source, Duration at) {
        return spans.stream()
                .filter(span ->
                        span.source().equals(source) && span.start().compareTo(at) <= 0 && at.compareTo(span.end()) < 0)
                .mapToInt(StepSpan::step)
                .findFirst()
                .orElse(0);
    }

    /** Where the step begins, in the first narration in which it is on; empty where it never is. */
    public Optional<StepSpan> begin(int step) {
        List<StepSpan> visits =
                spans.stream().filter(span -> span.step() == step).toList();
        return StepSpan.first(visits.stream()
                .filter(visit -> visit.source().equals(visits.get(0).source()))
                .toList());
    }
}
