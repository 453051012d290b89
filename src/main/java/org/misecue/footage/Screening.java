package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_VIDEO;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_ref;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;

import java.nio.file.Path;
import java.time.Duration;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.bytedeco.javacpp.BytePointer;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/**
 * A film seen once from beginning to end, a few frames of each second: every one small, and in its own size where asked
 * for. Pictures stand upright, with square pixels, in grey.
 */
public final class Screening implements AutoCloseable {

    /** Larger pictures are made smaller; nothing that a viewer can read is lost by that. */
    private static final int WIDEST = 1920;

    private final Path film;
    private final Decoder decoder;
    private final Duration between;
    private final int smallSide;
    private final AVFrame frame = av_frame_alloc();
    private final AVFrame shared = av_frame_alloc();
    private final AVFrame finished = av_frame_alloc();
    private @Nullable Filter small;
    private @Nullable Filter whole;
    private Shape shape = new Shape(0, 0, 0);
    private Size size = new Size(0, 0);
    private Duration due = Duration.ZERO;
    private Duration at = Duration.ZERO;
    private boolean begun;

    private record Shape(int width, int height, int format) {}

    private record Size(int width, int height) {

        Size within(int side) {
            double shrink = Math.min(1, (double) side / Math.max(width, height));
            return new Size(
                    Math.max(1, (int) Math.round(width * shrink)), Math.max(1, (int) Math.round(height * shrink)));
        }

        String chain(String flags) {
            return ",scale=w=%d:h=%d:flags=%s,format=gray".formatted(width, height, flags);
        }
    }

    private Screening(Path film, Decoder decoder, Duration between, int smallSide) {
        this.film = film;
        this.decoder = decoder;
        this.between = between;
        this.smallSide = smallSide;
    }

    /**
     * Opens a film.
     *
     * @param between how long at least from one frame to the next
     * @param smallSide the longer side of the small pictures, in pixels
     * @throws BadInput if the film cannot be used or has no picture
     */
    public static Screening open(Path film, Duration between, int smallSide) {
        Reel reel = Reel.open(film);
        int track = reel.best(AVMEDIA_TYPE_VIDEO).orElse(-1);
        if (track < 0) {
            reel.close();
            throw new BadInput(
                    Place.of(film.toString()),
                    "the film has sound but no picture; name a film with a picture to read what it shows");
        }
        return new Screening(film, new Decoder(reel, track), between, smallSide);
    }

    /**
     * Goes to the next frame that is due; false at the end.
     *
     * @throws BadInput if not one frame can be read
     */
    public boolean next() {
        while (decoder.next(frame)) {
            Duration time = Ffmpeg.time(frame.pts(), decoder.stream().time_base())
                    .minus(decoder.reel().origin());
            if (!begun || time.plus(Playhead.ROUNDING).compareTo(due) >= 0) {
                begun = true;
                at = time.isNegative() ? Duration.ZERO : time;
                due = at.plus(between);
                return true;
            }
        }
        if (!begun) {
            throw new BadInput(
                    Place.of(film.toString()), "no picture can be read from the film; copy it again from the camera");
        }
        return false;
    }

    /** When the frame begins, on the film's clock. */
    public Duration at() {
        return at;
    }

    public Duration length() {
        return decoder.reel().length();
    }

    public Grey small() {
        try {
            match();
            return through(small);
        } catch (FilmFault e) {
            throw e.of(film);
        }
    }

    public Grey whole() {
        try {
            match();
            return through(whole);
        } catch (FilmFault e) {
            throw e.of(film);
        }
    }

    /** The filters fit the frame, also where the picture changes its size within the film; what they give does not. */
    private void match() {
        Shape now = new Shape(frame.width(), frame.height(), frame.format());
        if (now.equals(shape)) {
            return;
        }
        shape = now;
        close(small);
        close(whole);
        int turn = Reel.turn(decoder.stream().codecpar());
        if (size.width() == 0) {
            size = upright(turn).within(WIDEST);
        }
        AVRational base = decoder.stream().time_base();
        String chain = Filter.upright(turn);
        whole = Filter.pictures(frame, base, chain + size.chain("bicubic+accurate_rnd"));
        small = Filter.pictures(frame, base, chain + size.within(smallSide).chain("area+accurate_rnd"));
    }

    private Size upright(int turn) {
        AVRational aspect = frame.sample_aspect_ratio();
        int width = aspect.num() == 0 ? frame.width() : Math.round((float) frame.width() * aspect.num() / aspect.den());
        return turn % 180 == 0 ? new Size(width, frame.height()) : new Size(frame.height(), width);
    }

    private Grey through(@Nullable Filter filter) {
        if (filter == null) {
            throw new IllegalStateException("no frame yet");
        }
        Ffmpeg.done(av_frame_ref(shared, frame), "sharing a frame");
        filter.push(shared);
        if (!filter.pull(finished)) {
            throw new IllegalStateException("the filter kept a frame back");
        }
        Grey grey = grey(finished);
        av_frame_unref(finished);
        return grey;
    }

    private static Grey grey(AVFrame frame) {
        int width = frame.width();
        byte[] pixels = new byte[width * frame.height()];
        BytePointer rows = frame.data(0);
        for (int y = 0; y < frame.height(); y++) {
            rows.position((long) y * frame.linesize(0)).get(pixels, y * width, width);
        }
        return new Grey(width, frame.height(), pixels);
    }

    private static void close(@Nullable Filter filter) {
        if (filter != null) {
            filter.close();
        }
    }

    @Override
    public void close() {
        close(small);
        close(whole);
        av_frame_free(frame);
        av_frame_free(shared);
        av_frame_free(finished);
        decoder.close();
    }
}
