package org.misecue.align;

import java.time.Duration;
import java.util.List;

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
}
