package org.misecue.align;

import java.time.Duration;

/**
 * A stretch of narration, {@code [start, end)}, during which one step is on.
 *
 * @param step from 1; 0 before the method begins
 * @param source the narration file
 */
public record StepSpan(int step, String source, Duration start, Duration end) {}
