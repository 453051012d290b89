package org.misecue.footage;

import java.time.Duration;
import java.util.List;

/**
 * A sheet of small pictures to be made of a film.
 *
 * @param name of its file
 * @param heading above the pictures
 * @param stretches of the film that it shows, in time order
 * @param most pictures; fewer where there is less than a second for each
 * @param columns how many pictures stand beside each other
 */
public record SheetPlan(String name, String heading, List<Stretch> stretches, int most, int columns) {

    /** A part of a film, {@code [from, to)}. */
    public record Stretch(Duration from, Duration to) {

        Duration length() {
            return to.minus(from);
        }
    }
}
