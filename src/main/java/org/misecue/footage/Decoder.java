package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.AVDISCARD_ALL;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_unref;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_alloc_context3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_find_decoder;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_flush_buffers;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_open2;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_to_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_frame;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_packet;
import static org.bytedeco.ffmpeg.global.avformat.AVSEEK_FLAG_BACKWARD;
import static org.bytedeco.ffmpeg.global.avformat.av_index_search_timestamp;
import static org.bytedeco.ffmpeg.global.avformat.av_read_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_seek_frame;
import static org.bytedeco.ffmpeg.global.avformat.avformat_index_get_entry;
import static org.bytedeco.ffmpeg.global.avutil.AV_NOPTS_VALUE;

import java.time.Duration;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.misecue.notice.BadInput;

/**
 * The frames of one track, in the order in which they are shown or heard. It takes its reel over: one reel, one decoder,
 * closed together.
 */
final class Decoder implements AutoCloseable {

    private final Reel reel;
    private final AVStream stream;
    private final AVCodecContext codec;
    private final AVPacket packet = av_packet_alloc();
    private boolean draining;
    private long lastRead = Long.MIN_VALUE;

    Decoder(Reel reel, int index) {
        this.reel = reel;
        this.stream = reel.context().streams(index);
        for (AVStream other : reel.streams()) {
            if (other.index() != index) {
                other.discard(AVDISCARD_ALL);
            }
        }
        AVCodec decoder = avcodec_find_decoder(stream.codecpar().codec_id());
        codec = avcodec_alloc_context3(decoder);
        avcodec_parameters_to_context(codec, stream.codecpar());
        codec.pkt_timebase(stream.time_base());
        codec.thread_count(0);
        if (decoder == null || avcodec_open2(codec, decoder, (AVDictionary) null) < 0) {
            close();
            throw new BadInput(
                    reel.place(), "this build cannot decode the film's codec; export the film as H.264 with AAC sound");
        }
    }

    /** Whether this build knows the track's codec. */
    static boolean canDecode(AVStream stream) {
        return avcodec_find_decoder(stream.codecpar().codec_id()) != null;
    }

    AVStream stream() {
        return stream;
    }

    Reel reel() {
        return reel;
    }

    /** A time on the film's clock in this track's ticks. */
    long ticks(Duration at) {
        return Ffmpeg.ticks(reel.origin().plus(at), stream.time_base());
    }

    /** Goes to a random-access frame at or before the time; {@link #next} goes on from there. */
    void seek(Duration at) {
        av_seek_frame(reel.context(), stream.index(), ticks(at), AVSEEK_FLAG_BACKWARD);
        avcodec_flush_buffers(codec);
        draining = false;
    }

    /** Whether the file's index knows a random-access frame at or before the time that was not read yet. */
    boolean canLeapTo(Duration at) {
        int entry = av_index_search_timestamp(stream, ticks(at), AVSEEK_FLAG_BACKWARD);
        return entry >= 0 && avformat_index_get_entry(stream, entry).timestamp() > lastRead;
    }

    /** The next frame with its time, or false at the end. Data that cannot be decoded is passed over, as players do. */
    boolean next(AVFrame frame) {
        while (avcodec_receive_frame(codec, frame) < 0) {
            if (draining) {
                return false;
            }
            feed();
        }
        if (frame.best_effort_timestamp() != AV_NOPTS_VALUE) {
            frame.pts(frame.best_effort_timestamp());
        }
        return true;
    }

    private void feed() {
        if (av_read_frame(reel.context(), packet) < 0) {
            draining = true;
            avcodec_send_packet(codec, null);
            return;
        }
        if (packet.stream_index() == stream.index()) {
            lastRead = Math.max(packet.dts(), packet.pts());
            avcodec_send_packet(codec, packet);
        }
        av_packet_unref(packet);
    }

    @Override
    public void close() {
        av_packet_free(packet);
        avcodec_free_context(codec);
        reel.close();
    }
}
