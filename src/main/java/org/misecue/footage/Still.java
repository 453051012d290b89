package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.misecue.notice.BadInput;

/** One frame of a film as a picture. */
public final class Still {

    private Still() {}

    /**
     * Writes the frame that is on screen at a moment: the last that begins at or before it. The picture stands upright,
     * with square pixels, in the film's own size. An older file is replaced only by a finished one.
     *
     * @param at from zero to before the film's end
     * @throws BadInput if the film cannot be used, has no picture or is shorter, or if the file cannot be written
     */
    public static void at(Path film, Duration at, Path png) {
        write(film, at, png, "");
    }

    /**
     * As {@link #at}, made smaller where the picture is wider than a width.
     *
     * @param width in pixels, above 0
     */
    public static void small(Path film, Duration at, int width, Path png) {
        write(film, at, png, ",scale=w='min(iw,%d)':h=-1:flags=area+accurate_rnd".formatted(width));
    }

    private static void write(Path film, Duration at, Path png, String size) {
        int track;
        try (Reel reel = Reel.open(film)) {
            Moments.check(reel, at);
            track = reel.best(AVMEDIA_TYPE_VIDEO)
                    .orElseThrow(() -> new BadInput(
                            reel.place(), "the film has sound but no picture; name a film with a picture for stills"));
        }
        byte[] picture;
        try (Playhead playhead = Playhead.open(film, track, at)) {
            picture = png(playhead, size);
        } catch (FilmFault e) {
            throw e.of(film);
        }
        NewFile.write(png, place -> {
            Files.write(place, picture);
            return true;
        });
    }

    private static byte[] png(Playhead playhead, String size) {
        AVStream stream = playhead.decoder().stream();
        String chain = Filter.upright(Reel.turn(stream.codecpar())) + size + ",format=rgb24";
        AVFrame finished = av_frame_alloc();
        try (Filter filter = Filter.pictures(playhead.frame(), stream.time_base(), chain)) {
            filter.push(playhead.frame());
            filter.push(null);
            filter.pull(finished);
            return Png.encode(finished);
        } finally {
            av_frame_free(finished);
        }
    }
}
