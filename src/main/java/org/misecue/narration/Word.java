package org.misecue.narration;

import java.time.Duration;

/** One spoken word as the recogniser wrote it, and when it begins. */
public record Word(String text, Duration at) {}
