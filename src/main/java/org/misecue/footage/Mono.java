package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_ref;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.function.Consumer;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.FloatPointer;
import org.jspecify.annotations.Nullable;

/** A sound track as one channel of 8000 samples a second, which is enough to know a sound again. */
final class Mono implements AutoCloseable {

    static final int RATE = 8000;

    private final String chain;
    private final Decoder decoder;
    private final Consumer<float[]> samples;
    private final AVFrame shared = av_frame_alloc();
    private final AVFrame finished = av_frame_alloc();
    private @Nullable Filter filter;

    /**
     * @param from where the first sample lies, on the film's clock
     * @param cut {@code ":end=…"} or nothing
     */
    private Mono(Decoder decoder, Duration from, String cut, Consumer<float[]> samples) {
        this.decoder = decoder;
        this.samples = samples;
        String start = seconds(decoder.reel().origin().plus(from));
        // Sound that begins later is preceded by silence.
        this.chain = "atrim=start=%s%s,asetpts=PTS-%s/TB".formatted(start, cut, start)
                + ",aresample=%d:async=1:first_pts=0,aformat=sample_fmts=flt:channel_layouts=mono".formatted(RATE);
    }

    /** All of a track. */
    static Mono whole(Decoder decoder, Consumer<float[]> samples) {
        return new Mono(decoder, Duration.ZERO, "", samples);
    }

    /** {@code [from, to)} of it. */
    static Mono part(Decoder decoder, Duration from, Duration to, Consumer<float[]> samples) {
        String end = seconds(decoder.reel().origin().plus(to));
        return new Mono(decoder, from, ":end=" + end, samples);
    }

    /** Hears a decoded frame, which stays the caller's. */
    void hear(AVFrame frame) {
        Filter mixer = filter;
        if (mixer == null) {
            mixer = Filter.sound(frame, decoder.stream().time_base(), chain);
            filter = mixer;
        }
        Ffmpeg.done(av_frame_ref(shared, frame), "sharing a frame");
        mixer.push(shared);
        pull(mixer);
    }

    /** Hands out what is left. */
    void end() {
        if (filter != null) {
            filter.push(null);
            pull(filter);
        }
    }

    private void pull(Filter mixer) {
        while (mixer.pull(finished)) {
            float[] some = new float[finished.nb_samples()];
            new FloatPointer(finished.data(0)).get(some);
            samples.accept(some);
            av_frame_unref(finished);
        }
    }

    private static String seconds(Duration time) {
        return BigDecimal.valueOf(time.toNanos(), 9).toPlainString();
    }

    @Override
    public void close() {
        if (filter != null) {
            filter.close();
        }
        av_frame_free(shared);
        av_frame_free(finished);
    }
}
