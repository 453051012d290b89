package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_move_ref;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** The frame that is on screen at a moment, and those after it. It takes its decoder over. */
final class Playhead implements AutoCloseable {

    /** Moments are written in thousandths; a frame that begins within half of one is meant. */
    static final Duration ROUNDING = Duration.ofNanos(500_000);

    /** How far before the moment to begin where the file's index leads too far, as with reordered frames. */
    private static final List<Duration> RUN_UPS = List.of(Duration.ZERO, Duration.ofSeconds(10), Duration.ofDays(1));

    /** Indexes name the time of decoding; a frame is shown later than that, by no more than so many frames … */
    private static final int REORDERED = 5;
    /** … or by less than this, where nobody knows how long frames last. */
    private static final Duration REORDERING = Duration.ofSeconds(1);

    private final Decoder decoder;
    private final AVFrame current = av_frame_alloc();
    private final AVFrame upcoming = av_frame_alloc();
    private boolean more;

    private Playhead(Decoder decoder) {
        this.decoder = decoder;
    }

    /** Goes to the frame on screen at the moment; before the first frame, to the first. False if there is none. */
    private boolean goTo(Duration at) {
        for (Duration runUp : RUN_UPS) {
            Duration from = at.minus(runUp);
            decoder.seek(from.isNegative() ? Duration.ZERO : from);
            more = decoder.next(upcoming);
            boolean found = false;
            long target = decoder.ticks(at.plus(ROUNDING));
            while (more && upcoming.pts() <= target) {
                found = advance();
            }
            if (found) {
                return true;
            }
        }
        return advance();
    }

    /**
     * Opens a picture track at a moment.
     *
     * @throws BadInput if no frame can be decoded
     */
    static Playhead open(Path film, int track, Duration at) {
        return open(Reel.open(film), track, at);
    }

    /** The same of a film that is open already; the reel is taken over. */
    static Playhead open(Reel reel, int track, Duration at) {
        Place place = reel.place();
        Playhead playhead = new Playhead(new Decoder(reel, track));
        if (playhead.goTo(at)) {
            return playhead;
        }
        playhead.close();
        throw new BadInput(place, "no picture can be read from the film; copy it again from the camera");
    }

    /**
     * Goes on to the frame on screen at a later moment; at the end the last one stays. Where a random-access frame lies between
     * what was read and the moment, what is before that frame is passed over.
     */
    void forward(Duration at) {
        long target = decoder.ticks(at.plus(ROUNDING));
        Duration safe = at.minus(reordering());
        if (decoder.canLeapTo(safe)) {
            decoder.seek(safe);
            more = decoder.next(upcoming);
            if (!more || upcoming.pts() > target) {
                goTo(at); // the index led too far
            }
        }
        while (more && upcoming.pts() <= target) {
            advance();
        }
    }

    private Duration reordering() {
        AVRational rate = decoder.stream().avg_frame_rate();
        if (rate.num() <= 0 || rate.den() <= 0) {
            return REORDERING;
        }
        Duration frames = Duration.ofNanos(REORDERED * 1_000_000_000L * rate.den() / rate.num());
        return frames.compareTo(REORDERING) < 0 ? frames : REORDERING;
    }

    Decoder decoder() {
        return decoder;
    }

    /** Goes one frame on; false at the end, where the last frame stays. */
    boolean advance() {
        if (!more) {
            return false;
        }
        av_frame_unref(current);
        av_frame_move_ref(current, upcoming);
        more = decoder.next(upcoming);
        return true;
    }

    AVFrame frame() {
        return current;
    }

    /** When the next frame begins, in the track's ticks, or the given value where this is the last. */
    long nextPts(long atEnd) {
        return more ? upcoming.pts() : atEnd;
    }

    @Override
    public void close() {
        av_frame_free(current);
        av_frame_free(upcoming);
        decoder.close();
    }
}
