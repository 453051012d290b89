package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.misecue.notice.BadInput;

/** A moment of a film as a film of its own. */
public final class Clip {

    private Clip() {}

    /**
     * Cuts {@code [from, to)} out into an MP4 file with H.264 and AAC, exact to the frame and to the sample; an end
     * beyond the film's is the film's. An older file is replaced only by a finished one; the same film and times give
     * the same bytes.
     *
     * @throws BadInput if the film cannot be used or lacks the moment, if {@code to} is not after {@code from}, or if
     *     the file cannot be written
     */
    public static void cut(Path film, Duration from, Duration to, Path out) {
        Duration end;
        List<OptionalInt> tracks;
        try (Reel reel = Reel.open(film)) {
            Moments.check(reel, from);
            if (to.compareTo(from) <= 0) {
                throw new BadInput(
                        reel.place(),
                        "a clip ends after it begins, not at %s after %s; swap the two"
                                .formatted(Moments.text(to), Moments.text(from)));
            }
            end = to.compareTo(reel.length()) > 0 ? reel.length() : to;
            tracks = List.of(reel.best(AVMEDIA_TYPE_VIDEO), reel.best(AVMEDIA_TYPE_AUDIO));
        }
        List<Lane> lanes = new ArrayList<>();
        try {
            tracks.get(0).ifPresent(track -> lanes.add(PictureLane.open(film, track, from, end)));
            tracks.get(1)
                    .ifPresent(track -> SoundLane.open(film, track, from, end).ifPresent(lanes::add));
            NewFile.write(out, place -> Making.write(lanes, place, "", at -> true));
        } catch (FilmFault e) {
            throw e.of(film);
        } finally {
            lanes.forEach(Lane::close);
        }
    }
}
