package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.AV_CODEC_ID_PNG;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_alloc_context3;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_find_encoder;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_free_context;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_open2;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_receive_packet;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_send_frame;

import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;

/** A frame in RGB as the bytes of a PNG file. */
final class Png {

    private Png() {}

    static byte[] encode(AVFrame frame) {
        AVCodec encoder = avcodec_find_encoder(AV_CODEC_ID_PNG);
        AVCodecContext codec = avcodec_alloc_context3(encoder);
        AVPacket packet = av_packet_alloc();
        try {
            codec.width(frame.width());
            codec.height(frame.height());
            codec.pix_fmt(frame.format());
            codec.time_base().num(1).den(1);
            Ffmpeg.done(avcodec_open2(codec, encoder, (AVDictionary) null), "opening the PNG encoder");
            Ffmpeg.done(avcodec_send_frame(codec, frame), "encoding a PNG");
            avcodec_send_frame(codec, null);
            Ffmpeg.done(avcodec_receive_packet(codec, packet), "encoding a PNG");
            byte[] bytes = new byte[packet.size()];
            packet.data().get(bytes);
            return bytes;
        } finally {
            av_packet_free(packet);
            avcodec_free_context(codec);
        }
    }
}
