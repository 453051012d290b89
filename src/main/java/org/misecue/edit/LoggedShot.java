package org.misecue.edit;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.misecue.shots.Shot;

/**
 * A shot of the list, and where it is.
 *
 * @param places in the order of the films; for a shot to look for, where its step is on; empty only for a missing one
 */
public record LoggedShot(Shot shot, Standing standing, List<Place> places) {

    /**
     * A stretch of a film, {@code [from, to)} on its clock.
     *
     * @param film its file, relative to the episode
     * @param take the take that was called; 0 where none was
     */
    public record Place(String film, Duration from, Duration to, int take) {}

    /** How many takes were called, each number once. */
    public int takesCalled() {
        Set<Integer> takes =
                places.stream().map(Place::take).filter(take -> take > 0).collect(Collectors.toSet());
        return takes.size();
    }
}
