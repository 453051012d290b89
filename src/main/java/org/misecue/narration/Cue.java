package org.misecue.narration;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A stretch of narration, {@code [start, end)} on the narration's clock.
 *
 * @param speaker who speaks, where the file says so
 * @param text without markup, in one line: the words with one space between them
 * @param words with times where the file has them, otherwise spread evenly over the cue; never empty for a text with words
 */
public record Cue(Duration start, Duration end, Optional<String> speaker, String text, List<Word> words) {}
