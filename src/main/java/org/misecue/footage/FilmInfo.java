package org.misecue.footage;

import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * What a film holds.
 *
 * @param length from the first frame to the end of the last
 * @param tracks in the file's order
 * @param starts the time code of the first frame, where the camera wrote one
 */
public record FilmInfo(Duration length, List<Track> tracks, Optional<Timecode> starts) {

    /** The first picture track; empty for a sound recording. */
    public Optional<Track.Picture> picture() {
        return tracks.stream()
                .filter(Track.Picture.class::isInstance)
                .map(Track.Picture.class::cast)
                .findFirst();
    }

    /** The first sound track. */
    public Optional<Track.Sound> sound() {
        return tracks.stream()
                .filter(Track.Sound.class::isInstance)
                .map(Track.Sound.class::cast)
                .findFirst();
    }
}
