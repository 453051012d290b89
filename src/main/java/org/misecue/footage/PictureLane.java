package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avformat.av_guess_frame_rate;

import java.nio.file.Path;
import java.time.Duration;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;

/** The picture's way into a clip: it begins with the frame that is on screen at the clip's beginning. */
final class PictureLane extends Lane {

    /** H.264 with 4:2:0 colour wants even sides, and the encoder ends at UHD. */
    private static final String ENCODABLE = ",scale=w='min(iw,3840)':h='min(ih,3840)'"
            + ":force_original_aspect_ratio=decrease:force_divisible_by=2:flags=bicubic,format=yuv420p";

    /** For a proxy: quick to make, quick to decode, and still to be read on a page. */
    private static final int SMALL = 960;

    private final boolean small;
    private final Decoder decoder;
    private final Playhead playhead;
    private final long zero;
    private final long end;
    private boolean first = true;

    private PictureLane(Playhead playhead, Filter filter, boolean small, Duration from, Duration to) {
        super(filter);
        this.small = small;
        this.playhead = playhead;
        this.decoder = playhead.decoder();
        // A frame that begins a trifle later is meant by the rounded moment: the clip's clock starts with it.
        long start = decoder.ticks(from);
        long begins = playhead.frame().pts();
        this.zero = begins <= decoder.ticks(from.plus(Playhead.ROUNDING)) ? Math.max(start, begins) : start;
        this.end = decoder.ticks(to);
    }

    static PictureLane open(Path film, int track, Duration from, Duration to) {
        return open(film, track, false, from, to);
    }

    /** The whole film, small and with a key frame every second. */
    static PictureLane small(Path film, int track) {
        return open(film, track, true, Duration.ZERO, FOREVER);
    }

    private static PictureLane open(Path film, int track, boolean small, Duration from, Duration to) {
        Playhead playhead = Playhead.open(film, track, from);
        AVStream stream = playhead.decoder().stream();
        int turn = Reel.turn(stream.codecpar());
        try {
            String chain = small ? Filter.small(turn, SMALL) : Filter.upright(turn) + ENCODABLE;
            Filter filter = Filter.pictures(playhead.frame(), stream.time_base(), chain);
            return new PictureLane(playhead, filter, small, from, to);
        } catch (FilmFault e) {
            playhead.close();
            throw e;
        }
    }

    @Override
    boolean feed(Filter into) {
        AVFrame frame = playhead.frame();
        if (!first && (!playhead.advance() || frame.pts() >= end)) {
            into.push(null);
            return false;
        }
        long begins = first ? zero : frame.pts();
        frame.pts(begins - zero);
        long last = small ? begins + frame.duration() : end;
        frame.duration(Math.max(1, Math.min(end, playhead.nextPts(last)) - begins));
        first = false;
        into.push(frame);
        return true;
    }

    @Override
    Encoder newEncoder(AVFrame frame, Filter from, FilmWriter writer) {
        AVRational rate = av_guess_frame_rate(decoder.reel().context(), decoder.stream(), null);
        Encoder encoder = Encoder.pictures(frame, from.base(), rate, writer);
        return small ? encoder.withKeyEverySecond() : encoder;
    }

    @Override
    public void close() {
        super.close();
        playhead.close();
    }
}
