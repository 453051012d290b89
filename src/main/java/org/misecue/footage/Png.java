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
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_RGB24;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_get_buffer;

import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.BytePointer;

/** A frame in RGB as the bytes of a PNG file. */
final class Png {

    private Png() {}

    static byte[] encode(Rgb picture) {
        AVFrame frame = av_frame_alloc();
        try {
            frame.width(picture.width()).height(picture.height()).format(AV_PIX_FMT_RGB24);
            Ffmpeg.done(av_frame_get_buffer(frame, 0), "making room for a picture");
            BytePointer rows = frame.data(0);
            int row = 3 * picture.width();
            for (int y = 0; y < picture.height(); y++) {
                rows.position((long) y * frame.linesize(0)).put(picture.pixels(), y * row, row);
            }
            return encode(frame);
        } finally {
            av_frame_free(frame);
        }
    }

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
