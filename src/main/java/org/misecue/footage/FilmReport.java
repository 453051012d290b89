package org.misecue.footage;

import java.util.List;

/**
 * A film as it was found.
 *
 * @param name relative to the episode
 * @param sounds what was heard on each sound track, in the order of the tracks
 */
public record FilmReport(String name, FilmInfo info, List<TrackSound> sounds) {

    List<Track.Sound> soundTracks() {
        return info.tracks().stream()
                .filter(Track.Sound.class::isInstance)
                .map(Track.Sound.class::cast)
                .toList();
    }
}
