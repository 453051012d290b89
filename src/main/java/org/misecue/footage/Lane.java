package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_unref;

import java.time.Duration;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.jspecify.annotations.Nullable;

/**
 * One track's way into a clip: decoder, filter, encoder. First {@link #prepare} on every lane, then the writer begins,
 * then {@link #step} until all lanes are at their end.
 */
abstract class Lane implements AutoCloseable {

    /** Longer than any film. */
    static final Duration FOREVER = Duration.ofDays(365);

    private final Filter filter;
    private final AVFrame finished = av_frame_alloc();
    private @Nullable Encoder encoder;
    private boolean fed;
    private boolean open;

    Lane(Filter filter) {
        this.filter = filter;
    }

    /** Pushes one more frame into the filter, or null as the last; says whether there may be more. */
    abstract boolean feed(Filter into);

    /** The encoder for frames like the first. */
    abstract Encoder newEncoder(AVFrame first, Filter from, FilmWriter writer);

    /** Makes the first frame ready and opens the encoder; false if the track has nothing in the clip. */
    final boolean prepare(FilmWriter writer) {
        fed = true;
        open = pull();
        if (open) {
            encoder = newEncoder(finished, filter, writer);
        }
        return open;
    }

    /** When the frame that is to be written next begins, on the clip's clock. */
    final Duration next() {
        return Ffmpeg.time(finished.pts(), filter.base());
    }

    final boolean isOpen() {
        return open;
    }

    /** Writes one frame. */
    final void step() {
        if (encoder == null) {
            throw new IllegalStateException("not prepared");
        }
        encoder.encode(finished);
        av_frame_unref(finished);
        open = pull();
        if (!open) {
            encoder.encode(null);
        }
    }

    private boolean pull() {
        while (!filter.pull(finished)) {
            if (!fed) {
                return false;
            }
            fed = feed(filter);
        }
        return true;
    }

    @Override
    public void close() {
        av_frame_free(finished);
        if (encoder != null) {
            encoder.close();
        }
        filter.close();
    }
}
