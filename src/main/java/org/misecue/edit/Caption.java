package org.misecue.edit;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What is on screen for {@code [start, end)}.
 *
 * @param speaker who speaks, where the narration says so
 * @param lines one or two
 */
public record Caption(Duration start, Duration end, Optional<String> speaker, List<String> lines) {

    /** Signs in a second that somebody has to read; a line break counts as a space. */
    double speed() {
        int signs = lines.stream().mapToInt(String::length).sum() + lines.size() - 1;
        return signs * 1000.0 / Math.max(1, end.minus(start).toMillis());
    }
}
