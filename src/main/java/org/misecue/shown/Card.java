package org.misecue.shown;

import java.time.Duration;
import java.util.List;

/**
 * Text that stood in the picture for a while: a lower third, a title card, a list of ingredients.
 *
 * @param film the film's name relative to the episode, such as {@code footage/take-1.mp4}
 * @param from when it was first seen, on the film's clock
 * @param to when it was last seen
 * @param lines from top to bottom; never empty
 */
public record Card(String film, Duration from, Duration to, List<CardLine> lines) {}
