package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.misecue.notice.BadInput;

/**
 * A smaller copy of a film for browsers: H.264 and AAC in MP4, with the index in front and a key frame at least every second.
 * It has the film's own frames, each at its own time, on a clock that begins with the first picture.
 */
public final class Proxy {

    private Proxy() {}

    /**
     * Makes a copy. An older file is replaced only by a finished one; the same film gives the same bytes.
     *
     * @param mark kept in the copy, to be read by {@link #mark}
     * @return whether the lookout let it be made to its end; if not, nothing is left behind
     * @throws BadInput if the film cannot be used or the file cannot be written
     */
    public static boolean make(Path film, Path out, String mark, Lookout lookout) {
        List<OptionalInt> tracks;
        try (Reel reel = Reel.open(film)) {
            tracks = List.of(reel.best(AVMEDIA_TYPE_VIDEO), reel.best(AVMEDIA_TYPE_AUDIO));
        }
        List<Lane> lanes = new ArrayList<>();
        try {
            tracks.get(0).ifPresent(track -> lanes.add(PictureLane.small(film, track)));
            tracks.get(1).ifPresent(track -> SoundLane.open(film, track, Duration.ZERO, Lane.FOREVER)
                    .ifPresent(lanes::add));
            return NewFile.write(out, place -> Making.write(lanes, place, mark, lookout));
        } catch (FilmFault e) {
            throw e.of(film);
        } finally {
            lanes.forEach(Lane::close);
        }
    }

    /** The mark that a copy was made with; empty for every other file. */
    public static Optional<String> mark(Path proxy) {
        try (Reel reel = Reel.open(proxy)) {
            return reel.tag(FilmWriter.COMMENT);
        } catch (BadInput e) {
            return Optional.empty();
        }
    }
}
