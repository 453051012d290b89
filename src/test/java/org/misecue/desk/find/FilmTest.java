package org.misecue.desk.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.FrameRate;
import org.misecue.footage.Timecode;
import org.misecue.footage.Track;

class FilmTest {

    private static final FrameRate RATE = new FrameRate(25, 1);
    private static final Duration MOMENT = Duration.ofMillis(83_440);

    @Test
    void a_moment_has_the_films_time_code_and_the_cameras() {
        Film film = film(
                List.of(new Track.Picture("h264", 640, 360, RATE, false)),
                Optional.of(Timecode.parse("10:00:00:00", RATE)));
        assertThat(film.timecode(MOMENT)).contains("00:01:23:11");
        assertThat(film.cameraTimecode(MOMENT)).contains("10:01:23:11");
        assertThat(film.file()).isEqualTo("take 1.mp4");
    }

    @Test
    void a_recording_without_a_picture_has_no_frames_to_count() {
        Film film = film(List.of(new Track.Sound("aac", 48_000, 1)), Optional.empty());
        assertThat(film.timecode(MOMENT)).isEmpty();
        assertThat(film.cameraTimecode(MOMENT)).isEmpty();
    }

    private static Film film(List<Track> tracks, Optional<Timecode> starts) {
        return new Film("footage/take 1.mp4", new FilmInfo(Duration.ofMinutes(8), tracks, starts));
    }
}
