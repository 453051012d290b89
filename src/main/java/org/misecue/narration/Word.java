package org.misecue.narration;

import java.time.Duration;

/**
 * One spoken word as the recogniser wrote it, and when it begins.
 *
 * @param text without white space
 */
public record Word(String text, Duration at) {}
