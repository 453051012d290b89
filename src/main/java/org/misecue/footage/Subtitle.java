package org.misecue.footage;

import java.time.Duration;
import java.util.Optional;

/**
 * One subtitle, on the film's clock.
 *
 * @param from when it appears; below zero where it does before the first frame
 * @param to when it goes, where the film tells
 * @param text with its markup
 */
public record Subtitle(Duration from, Optional<Duration> to, String text) {}
