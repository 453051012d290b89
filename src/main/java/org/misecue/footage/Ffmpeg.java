package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.AV_LOG_QUIET;
import static org.bytedeco.ffmpeg.global.avutil.AV_ROUND_DOWN;
import static org.bytedeco.ffmpeg.global.avutil.av_log_set_level;
import static org.bytedeco.ffmpeg.global.avutil.av_rescale_rnd;

import java.time.Duration;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** FFmpeg's libraries: loaded on first use, silent. Only the device library, which needs a sound server, stays out. */
final class Ffmpeg {

    private static final long NANOS = 1_000_000_000L;

    private Ffmpeg() {}

    static void ready(Place place) {
        try {
            av_log_set_level(AV_LOG_QUIET);
        } catch (LinkageError e) {
            throw new BadInput(
                    place,
                    "footage cannot be opened on this machine, because FFmpeg's libraries for it are not in lib/;"
                            + " take the footage out of the episode or use a build made for this machine",
                    e);
        }
    }

    /** Passes on what a call gave back; FFmpeg reports failure by a negative number. */
    static int done(int code, String what) {
        if (code < 0) {
            throw new FilmFault(what, code);
        }
        return code;
    }

    /** A time in ticks of a time base, rounded down. */
    static long ticks(Duration time, AVRational base) {
        return av_rescale_rnd(time.toNanos(), base.den(), NANOS * base.num(), AV_ROUND_DOWN);
    }

    static Duration time(long ticks, AVRational base) {
        return Duration.ofNanos(av_rescale_rnd(ticks, NANOS * base.num(), base.den(), AV_ROUND_DOWN));
    }
}
