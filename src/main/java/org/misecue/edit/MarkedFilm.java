package org.misecue.edit;

import java.time.Duration;
import java.util.List;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.FrameRate;
import org.misecue.footage.Timecode;
import org.misecue.footage.Track;

/**
 * A film with its markers.
 *
 * @param title of the episode
 * @param file relative to the episode, such as {@code footage/take-1.mp4}
 * @param rate of its frames
 * @param starts the time code of its first frame; 00:00:00:00 where the camera wrote none
 * @param length of the film
 * @param markers in time order, none beyond the end
 */
public record MarkedFilm(
        String title, String file, FrameRate rate, Timecode starts, Duration length, List<Marker> markers) {

    /** Where a recording has no pictures. */
    private static final FrameRate OF_SOUND = new FrameRate(25, 1);

    /** @param markers those beyond the film's end are left out */
    public static MarkedFilm of(String title, String file, FilmInfo film, List<Marker> markers) {
        FrameRate rate = film.picture().map(Track.Picture::rate).orElse(OF_SOUND);
        return new MarkedFilm(
                title,
                file,
                rate,
                film.starts().orElse(new Timecode(rate, false, 0)),
                film.length(),
                markers.stream()
                        .filter(marker -> marker.at().compareTo(film.length()) < 0)
                        .sorted(java.util.Comparator.comparing(Marker::at))
                        .toList());
    }

    /** The file's name without its folder. */
    String name() {
        return file.substring(file.lastIndexOf('/') + 1);
    }

    /** How many frames it has. */
    long frames() {
        return rate.frameAt(length);
    }

    /** The camera's time code at a moment. */
    Timecode timecode(Marker marker) {
        return starts.plus(marker.at());
    }
}
