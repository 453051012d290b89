package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.AVMEDIA_TYPE_AUDIO;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import java.nio.file.Path;
import java.time.Duration;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** Short pieces of a film's main sound track, read where they lie. */
final class Excerpts implements AutoCloseable {

    /** Decoders of sound need a few frames before they are right. */
    private static final Duration RUN_UP = Duration.ofMillis(250);

    private final Path film;
    private final Decoder decoder;
    private final AVFrame frame = av_frame_alloc();

    /** @param film that has sound which can be decoded */
    Excerpts(Path film) {
        this.film = film;
        Reel reel = Reel.open(film);
        decoder = new Decoder(reel, reel.best(AVMEDIA_TYPE_AUDIO).orElseThrow());
    }

    /**
     * So many samples.
     *
     * @param from of the first, on the film's clock and at the rate of {@link Mono}; where there is no sound, there is silence
     */
    float[] read(long from, int length) {
        float[] excerpt = new float[length];
        int before = (int) Math.max(0, Math.min(length, -from)); // before the film there is nothing to read
        Duration start = time(from + before);
        Duration end = time(from + length);
        int[] filled = {before};
        try (Mono mono = Mono.part(decoder, start, end, some -> {
            int taken = Math.min(some.length, length - filled[0]);
            System.arraycopy(some, 0, excerpt, filled[0], taken);
            filled[0] += taken;
        })) {
            decoder.seek(start.compareTo(RUN_UP) < 0 ? Duration.ZERO : start.minus(RUN_UP));
            long last = decoder.ticks(end);
            while (decoder.next(frame) && frame.pts() < last) {
                mono.hear(frame);
            }
            mono.end();
        } catch (FilmFault e) {
            throw e.of(film);
        }
        return excerpt;
    }

    private static Duration time(long samples) {
        return Duration.ofNanos(samples * (1_000_000_000L / Mono.RATE));
    }

    @Override
    public void close() {
        av_frame_free(frame);
        decoder.close();
    }
}
