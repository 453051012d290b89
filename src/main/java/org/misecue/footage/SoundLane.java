package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** The sound's way into a clip, cut to the sample. */
final class SoundLane extends Lane {

    /** Decoders of sound need a few frames before they are right. */
    private static final Duration RUN_UP = Duration.ofMillis(250);

    private final Decoder decoder;
    private final AVFrame frame;
    private final long end;
    private boolean first = true;

    private SoundLane(Decoder decoder, AVFrame frame, Filter filter, Duration to) {
        super(filter);
        this.decoder = decoder;
        this.frame = frame;
        this.end = decoder.ticks(to);
    }

    /** Empty if the track has no sound from there on. */
    static Optional<Lane> open(Path film, int track, Duration from, Duration to) {
        Decoder decoder = new Decoder(Reel.open(film), track);
        AVFrame frame = av_frame_alloc();
        try {
            decoder.seek(from.compareTo(RUN_UP) < 0 ? Duration.ZERO : from.minus(RUN_UP));
            if (decoder.next(frame)) {
                Duration origin = decoder.reel().origin();
                String chain = chain(origin.plus(from), origin.plus(to));
                Filter filter = Filter.sound(frame, decoder.stream().time_base(), chain);
                return Optional.of(new SoundLane(decoder, frame, filter, to));
            }
        } catch (FilmFault e) {
            release(decoder, frame);
            throw e;
        }
        release(decoder, frame);
        return Optional.empty();
    }

    private static String chain(Duration from, Duration to) {
        String start = seconds(from);
        return "atrim=start=%s:end=%s,asetpts=PTS-%s/TB".formatted(start, seconds(to), start)
                // Sound that begins later than the clip is preceded by silence.
                + ",aresample=48000:async=1:first_pts=0,aformat=sample_fmts=fltp:channel_layouts=mono|stereo"
                + ",asetnsamples=n=" + Encoder.AAC_FRAME + ":p=0";
    }

    private static String seconds(Duration time) {
        return BigDecimal.valueOf(time.toNanos(), 9).toPlainString();
    }

    @Override
    boolean feed(Filter into) {
        if ((!first && !decoder.next(frame)) || frame.pts() >= end) {
            into.push(null);
            return false;
        }
        first = false;
        into.push(frame);
        return true;
    }

    @Override
    Encoder newEncoder(AVFrame like, Filter from, FilmWriter writer) {
        return Encoder.sound(like, from.base(), writer);
    }

    @Override
    public void close() {
        super.close();
        release(decoder, frame);
    }

    private static void release(Decoder decoder, AVFrame frame) {
        av_frame_free(frame);
        decoder.close();
    }
}
