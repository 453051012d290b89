package org.misecue.desk.find;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.FrameRate;
import org.misecue.footage.Timecode;
import org.misecue.footage.Track;

/**
 * A film as an editor knows it.
 *
 * @param name relative to the episode, such as {@code footage/take-1.mp4}
 */
public record Film(String name, FilmInfo info) {

    /** Of the file alone, as addresses name it. */
    public String file() {
        return String.valueOf(Path.of(name).getFileName());
    }

    public Duration length() {
        return info.length();
    }

    /** Empty for a recording without a picture. */
    public Optional<FrameRate> rate() {
        return info.picture().map(Track.Picture::rate);
    }

    public Optional<Timecode> starts() {
        return info.starts();
    }

    /** Counted from the film's first frame. */
    public Optional<String> timecode(Duration at) {
        return rate().map(rate -> new Timecode(rate, false, 0).plus(at).toString());
    }

    /** The time code that the camera wrote. */
    public Optional<String> cameraTimecode(Duration at) {
        return starts().map(start -> start.plus(at).toString());
    }
}
