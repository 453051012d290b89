package org.misecue.narration;

import java.time.Duration;

/** A point in time in one source, on the source's own clock. */
public record Moment(String source, Duration at) {}
