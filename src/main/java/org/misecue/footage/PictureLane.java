package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avformat.av_guess_frame_rate;

import java.nio.file.Path;
import java.time.Duration;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.misecue.notice.BadInput;

/** The picture's way into a clip: it begins with the frame that is on screen at the clip's beginning. */
final class PictureLane extends Lane {

    /** H.264 with 4:2:0 colour wants even sides. */
    private static final String ENCODABLE = ",scale=w=trunc(iw/2)*2:h=trunc(ih/2)*2:flags=bicubic,format=yuv420p";

    private final Reel reel;
    private final Decoder decoder;
    private final Playhead playhead;
    private final long zero;
    private final long end;
    private boolean first = true;

    private PictureLane(Reel reel, Decoder decoder, Playhead playhead, Duration from, Duration to) {
        super(Filter.pictures(
                playhead.frame(),
                decoder.stream().time_base(),
                Filter.upright(Reel.turn(decoder.stream().codecpar())) + ENCODABLE));
        this.reel = reel;
        this.decoder = decoder;
        this.playhead = playhead;
        // A frame that begins a trifle later is meant by the rounded moment: the clip's clock starts with it.
        long start = decoder.ticks(from);
        long begins = playhead.frame().pts();
        this.zero = begins <= decoder.ticks(from.plus(Playhead.ROUNDING)) ? Math.max(start, begins) : start;
        this.end = decoder.ticks(to);
    }

    static PictureLane open(Path film, int track, Duration from, Duration to) {
        Reel reel = Reel.open(film);
        Decoder decoder = new Decoder(reel, track);
        Playhead playhead = new Playhead(decoder);
        if (!playhead.goTo(from)) {
            playhead.close();
            decoder.close();
            reel.close();
            throw new BadInput(reel.place(), "no picture can be read from the film; copy it again from the camera");
        }
        return new PictureLane(reel, decoder, playhead, from, to);
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
        frame.duration(Math.max(1, Math.min(end, playhead.nextPts(end)) - begins));
        first = false;
        into.push(frame);
        return true;
    }

    @Override
    Encoder newEncoder(AVFrame frame, Filter from, FilmWriter writer) {
        AVRational rate = av_guess_frame_rate(reel.context(), decoder.stream(), null);
        return Encoder.pictures(frame, from.base(), rate, writer);
    }

    @Override
    public void close() {
        super.close();
        playhead.close();
        decoder.close();
        reel.close();
    }
}
