package org.misecue.footage;

import java.util.List;
import java.util.Optional;

/**
 * A film as it was found.
 *
 * @param name relative to the episode
 * @param sounds what was heard on each sound track, in the order of the tracks; empty where one cannot be decoded
 */
public record FilmReport(String name, FilmInfo info, List<Optional<TrackSound>> sounds) {

    List<Track.Sound> soundTracks() {
        return info.tracks().stream()
                .filter(Track.Sound.class::isInstance)
                .map(Track.Sound.class::cast)
                .toList();
    }
}
