package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_ref;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;

import java.nio.file.Path;
import java.time.Duration;
import java.util.SortedSet;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.BytePointer;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;

/** Small pictures of a film at given moments, taken in one way forward; no frame is decoded twice. */
final class Frames implements AutoCloseable {

    /** Is given each picture; says whether to go on. */
    @FunctionalInterface
    interface Taker {
        boolean take(Duration at, Rgb picture);
    }

    private final Playhead playhead;
    private final int side;
    private final AVFrame shared = av_frame_alloc();
    private final AVFrame finished = av_frame_alloc();
    private @Nullable Filter filter;
    private Shape shape = new Shape(0, 0, 0);

    private record Shape(int width, int height, int format) {

        static Shape of(AVFrame frame) {
            return new Shape(frame.width(), frame.height(), frame.format());
        }
    }

    private Frames(Playhead playhead, int side) {
        this.playhead = playhead;
        this.side = side;
    }

    /**
     * Takes the frame on screen at each moment; at a moment beyond the film, the last.
     *
     * @param side the longer side of the pictures, in pixels; smaller ones stay as they are
     * @return false where the taker stopped it
     * @throws BadInput if the film cannot be used or has no picture
     */
    static boolean each(Path film, SortedSet<Duration> moments, int side, Taker taker) {
        if (moments.isEmpty()) {
            return true;
        }
        Reel reel = Reel.open(film);
        int track = reel.best(AVMEDIA_TYPE_VIDEO).orElse(-1);
        if (track < 0) {
            reel.close();
            throw new BadInput(reel.place(), "the film has sound but no picture; name a film with a picture");
        }
        try (Frames frames = new Frames(Playhead.open(reel, track, moments.first()), side)) {
            for (Duration at : moments) {
                frames.playhead.forward(at);
                if (!taker.take(at, frames.picture())) {
                    return false;
                }
            }
            return true;
        } catch (FilmFault e) {
            throw e.of(film);
        }
    }

    private Rgb picture() {
        Filter scale = matching();
        Ffmpeg.done(av_frame_ref(shared, playhead.frame()), "sharing a frame");
        scale.push(shared);
        if (!scale.pull(finished)) {
            throw new IllegalStateException("the filter kept a frame back");
        }
        Rgb picture = rgb(finished);
        av_frame_unref(finished);
        return picture;
    }

    /** The filter fits the frame, also where the picture changes its size within the film. */
    private Filter matching() {
        Shape now = Shape.of(playhead.frame());
        Filter fitting = filter;
        if (fitting == null || !now.equals(shape)) {
            if (fitting != null) {
                fitting.close();
            }
            AVStream stream = playhead.decoder().stream();
            String chain = Filter.upright(Reel.turn(stream.codecpar()))
                    + ",scale=w='min(iw,%1$d)':h='min(ih,%1$d)'".formatted(side)
                    + ":force_original_aspect_ratio=decrease:flags=area+accurate_rnd,format=rgb24";
            fitting = Filter.pictures(playhead.frame(), stream.time_base(), chain);
            filter = fitting;
            shape = now;
        }
        return fitting;
    }

    private static Rgb rgb(AVFrame frame) {
        int row = 3 * frame.width();
        byte[] pixels = new byte[row * frame.height()];
        BytePointer rows = frame.data(0);
        for (int y = 0; y < frame.height(); y++) {
            rows.position((long) y * frame.linesize(0)).get(pixels, y * row, row);
        }
        return new Rgb(frame.width(), frame.height(), pixels);
    }

    @Override
    public void close() {
        if (filter != null) {
            filter.close();
        }
        av_frame_free(shared);
        av_frame_free(finished);
        playhead.close();
    }
}
