package org.misecue.footage;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Writes the lanes of a film side by side into a file. */
final class Making {

    private Making() {}

    /**
     * @param comment for the file itself; none if empty
     * @return whether it was made to its end; if not, the file is of no use
     */
    static boolean write(List<Lane> lanes, Path file, String comment, Lookout lookout) {
        try (FilmWriter writer = new FilmWriter(file)) {
            lanes.forEach(lane -> lane.prepare(writer));
            writer.comment(comment);
            writer.begin();
            // Whichever track is behind goes next, so that little waits in memory.
            Optional<Lane> behind = behind(lanes);
            while (behind.isPresent()) {
                if (!lookout.goOn(behind.get().next())) {
                    return false;
                }
                behind.get().step();
                behind = behind(lanes);
            }
            writer.finish();
            return true;
        }
    }

    private static Optional<Lane> behind(List<Lane> lanes) {
        return lanes.stream().filter(Lane::isOpen).min(Comparator.comparing(Lane::next));
    }
}
