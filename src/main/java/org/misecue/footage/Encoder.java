package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_FLAG_BITEXACT;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_FLAG_FRAME_DURATION;
import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_FLAG_GLOBAL_HEADER;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_rescale_ts;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_alloc_context3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_find_encoder_by_name;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_open2;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_packet;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_frame;
import static org.bytedeco.ffmpeg.global.avutil.AV_PICTURE_TYPE_I;
import static org.bytedeco.ffmpeg.global.avutil.AV_PICTURE_TYPE_NONE;
import static org.bytedeco.ffmpeg.global.avutil.av_channel_layout_copy;
import static org.bytedeco.ffmpeg.global.avutil.av_opt_set;

import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.jspecify.annotations.Nullable;

/** One track's encoder: H.264 for pictures, AAC for sound. On one thread, so that the same film gives the same bytes. */
final class Encoder implements AutoCloseable {

    /** Samples in an AAC frame. */
    static final int AAC_FRAME = 1024;

    private static final double BITS_PER_PIXEL = 0.12;
    private static final long LEAST_BITS = 400_000;
    private static final long MOST_BITS = 20_000_000;
    private static final long SOUND_BITS_PER_CHANNEL = 64_000;

    private final AVCodecContext codec;
    private final AVPacket packet = av_packet_alloc();
    private final FilmWriter writer;
    private final AVStream stream;
    private boolean keyEverySecond;
    private long nextKey;

    private Encoder(AVCodecContext codec, AVCodec encoder, FilmWriter writer) {
        this.codec = codec;
        this.writer = writer;
        codec.flags(
                codec.flags() | AV_CODEC_FLAG_BITEXACT | AV_CODEC_FLAG_FRAME_DURATION | AV_CODEC_FLAG_GLOBAL_HEADER);
        codec.thread_count(1);
        Ffmpeg.done(avcodec_open2(codec, encoder, (AVDictionary) null), "opening an encoder");
        this.stream = writer.newStream(codec);
    }

    static Encoder pictures(AVFrame like, AVRational base, AVRational rate, FilmWriter writer) {
        AVCodec encoder = avcodec_find_encoder_by_name("libopenh264");
        AVCodecContext codec = avcodec_alloc_context3(encoder);
        codec.width(like.width());
        codec.height(like.height());
        codec.pix_fmt(like.format());
        codec.time_base(base);
        codec.framerate(rate);
        codec.sample_aspect_ratio(like.sample_aspect_ratio());
        codec.colorspace(like.colorspace());
        codec.color_range(like.color_range());
        codec.color_primaries(like.color_primaries());
        codec.color_trc(like.color_trc());
        double wanted = BITS_PER_PIXEL * like.width() * like.height() * rate.num() / rate.den();
        codec.bit_rate(Math.max(LEAST_BITS, Math.min(MOST_BITS, Math.round(wanted))));
        av_opt_set(codec.priv_data(), "allow_skip_frames", "0", 0);
        return new Encoder(codec, encoder, writer);
    }

    static Encoder sound(AVFrame like, AVRational base, FilmWriter writer) {
        AVCodec encoder = avcodec_find_encoder_by_name("aac");
        AVCodecContext codec = avcodec_alloc_context3(encoder);
        codec.sample_rate(like.sample_rate());
        codec.sample_fmt(like.format());
        av_channel_layout_copy(codec.ch_layout(), like.ch_layout());
        codec.time_base(base);
        codec.bit_rate(SOUND_BITS_PER_CHANNEL * like.ch_layout().nb_channels());
        return new Encoder(codec, encoder, writer);
    }

    /** Lets players begin anywhere without much decoding. */
    Encoder withKeyEverySecond() {
        keyEverySecond = true;
        return this;
    }

    /** Encodes a frame; null ends the track. */
    void encode(@Nullable AVFrame frame) {
        if (frame != null) {
            // Whether the source's frame was a key frame is no business of the new film.
            frame.pict_type(isKey(frame) ? AV_PICTURE_TYPE_I : AV_PICTURE_TYPE_NONE);
        }
        Ffmpeg.done(avcodec_send_frame(codec, frame), "encoding a frame");
        while (avcodec_receive_packet(codec, packet) >= 0) {
            av_packet_rescale_ts(packet, codec.time_base(), stream.time_base());
            packet.stream_index(stream.index());
            writer.write(packet);
        }
    }

    /** The first frame of each second. */
    private boolean isKey(AVFrame frame) {
        if (!keyEverySecond || frame.pts() < nextKey) {
            return false;
        }
        AVRational base = codec.time_base();
        long second = Math.floorDiv(Math.multiplyExact(frame.pts(), base.num()), base.den());
        nextKey = -Math.floorDiv(-Math.multiplyExact(second + 1, base.den()), base.num());
        return true;
    }

    @Override
    public void close() {
        av_packet_free(packet);
        avcodec_free_context(codec);
    }
}
