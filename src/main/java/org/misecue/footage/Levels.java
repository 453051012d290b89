package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/**
 * How the loudness of a sound goes up and down in each of eight bands, a hundred times a second: less than three megabytes
 * for an hour, and enough to find where two microphones heard the same.
 */
public final class Levels {

    static final int BANDS = 8;
    static final int A_SECOND = 100;

    /** From one to the next, in samples of {@link Mono}. */
    static final int STEP = Mono.RATE / A_SECOND;

    /** What is slower than a second either way says more about the room than about the sound. */
    private static final int AROUND = A_SECOND / 2;

    /** One clatter must not outweigh all that is said. */
    private static final double MOST = 3;

    /** In half decibels. */
    private final byte[][] bands;

    private final int steps;

    Levels(byte[][] bands, int steps) {
        this.bands = bands;
        this.steps = steps;
    }

    /**
     * Listens to a film's main sound track once.
     *
     * @return empty where it has none that can be decoded, and where the lookout stopped it
     * @throws org.misecue.notice.BadInput if the film cannot be used
     */
    public static Optional<Levels> of(Path film, Lookout lookout) {
        Reel reel = Reel.open(film);
        OptionalInt track = reel.best(AVMEDIA_TYPE_AUDIO);
        if (track.isEmpty() || !Decoder.canDecode(reel.context().streams(track.getAsInt()))) {
            reel.close();
            return Optional.empty();
        }
        AVFrame frame = av_frame_alloc();
        try (Decoder decoder = new Decoder(reel, track.getAsInt());
                LevelMeter meter = new LevelMeter(decoder)) {
            while (decoder.next(frame)) {
                meter.hear(frame);
                if (!lookout.goOn(meter.until())) {
                    return Optional.empty();
                }
            }
            return Optional.of(meter.levels());
        } catch (FilmFault e) {
            throw e.of(film);
        } finally {
            av_frame_free(frame);
        }
    }

    int steps() {
        return steps;
    }

    /** How a band goes up and down, with a spread of about 1; all 0 where it stays the same. */
    double[] swing(int band) {
        double[] swing = new double[steps];
        double squares = 0;
        long sum = 0;
        int from = 0;
        int to = 0;
        for (int step = 0; step < steps; step++) {
            for (; to < Math.min(steps, step + AROUND); to++) {
                sum += bands[band][to];
            }
            for (; from < step - AROUND; from++) {
                sum -= bands[band][from];
            }
            swing[step] = bands[band][step] - (double) sum / (to - from);
            squares += swing[step] * swing[step];
        }
        double spread = Math.sqrt(squares / Math.max(1, steps));
        for (int step = 0; step < steps && spread > 0; step++) {
            swing[step] = Math.max(-MOST, Math.min(MOST, swing[step] / spread));
        }
        return swing;
    }

    /** How much the sound goes up and down in a stretch, in decibels. */
    double unrest(int from, int to) {
        double unrest = 0;
        for (byte[] band : bands) {
            double mean = 0;
            for (int step = from; step < to; step++) {
                mean += band[step];
            }
            mean /= to - from;
            double squares = 0;
            for (int step = from; step < to; step++) {
                squares += (band[step] - mean) * (band[step] - mean);
            }
            unrest += Math.sqrt(squares / (to - from)) / 2 / BANDS;
        }
        return unrest;
    }

    Duration length() {
        return Duration.ofMillis(steps * 1000L / A_SECOND);
    }
}
