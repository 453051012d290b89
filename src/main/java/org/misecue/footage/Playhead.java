package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_move_ref;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;

import java.time.Duration;
import java.util.List;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** The frame that is on screen at a moment, and those after it. */
final class Playhead implements AutoCloseable {

    /** Moments are written in thousandths; a frame that begins within half of one is meant. */
    static final Duration ROUNDING = Duration.ofNanos(500_000);

    /** How far before the moment to begin where the file's index leads too far, as with reordered frames. */
    private static final List<Duration> RUN_UPS = List.of(Duration.ZERO, Duration.ofSeconds(10), Duration.ofDays(1));

    private final Decoder decoder;
    private final AVFrame current = av_frame_alloc();
    private final AVFrame upcoming = av_frame_alloc();
    private boolean more;

    Playhead(Decoder decoder) {
        this.decoder = decoder;
    }

    /** Goes to the frame on screen at the moment; before the first frame, to the first. False if there is none. */
    boolean goTo(Duration at) {
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
    }
}
