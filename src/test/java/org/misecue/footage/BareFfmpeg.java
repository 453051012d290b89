package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avfilter.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avfilter.AVFilterContext;
import org.bytedeco.ffmpeg.avfilter.AVFilterGraph;
import org.bytedeco.ffmpeg.avfilter.AVFilterInOut;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.javacpp.PointerPointer;

/** What FFmpeg's libraries do alone, for comparison with our classes. */
public final class BareFfmpeg implements AutoCloseable {

    private final AVFormatContext file = new AVFormatContext(null);
    private final AVStream stream;
    private final AVCodecContext codec;
    private final AVPacket packet = av_packet_alloc();
    private final AVFrame frame = av_frame_alloc();
    private final AVFrame out = av_frame_alloc();
    private boolean drained;

    private BareFfmpeg(Path film, int kind) {
        avformat_open_input(file, film.toString(), null, (AVDictionary) null);
        avformat_find_stream_info(file, (PointerPointer<?>) null);
        int index = av_find_best_stream(file, kind, -1, -1, (AVCodec) null, 0);
        for (int i = 0; i < file.nb_streams(); i++) {
            if (i != index) {
                file.streams(i).discard(AVDISCARD_ALL);
            }
        }
        stream = file.streams(index);
        AVCodec decoder = avcodec_find_decoder(stream.codecpar().codec_id());
        codec = avcodec_alloc_context3(decoder);
        avcodec_parameters_to_context(codec, stream.codecpar());
        codec.thread_count(0);
        avcodec_open2(codec, decoder, (AVDictionary) null);
    }

    private boolean next() {
        while (avcodec_receive_frame(codec, frame) < 0) {
            if (drained) {
                return false;
            }
            drained = av_read_frame(file, packet) < 0;
            avcodec_send_packet(codec, drained ? null : packet);
            av_packet_unref(packet);
        }
        return true;
    }

    /** Every frame of the sound, and nothing done with it. */
    public static void decode(Path film) {
        try (BareFfmpeg bare = new BareFfmpeg(film, AVMEDIA_TYPE_AUDIO)) {
            while (bare.next()) {
                av_frame_unref(bare.frame);
            }
        }
    }

    /** Through the meter and the finder of silence. */
    public static void hear(Path film) {
        try (BareFfmpeg bare = new BareFfmpeg(film, AVMEDIA_TYPE_AUDIO)) {
            String source = "abuffer@in=sample_rate=%d:sample_fmt=%s:channel_layout=%dc:time_base=1/%d"
                    .formatted(
                            bare.codec.sample_rate(),
                            av_get_sample_fmt_name(bare.codec.sample_fmt()).getString(),
                            bare.codec.ch_layout().nb_channels(),
                            bare.codec.sample_rate());
            AVFilterGraph graph = graph(
                    source + ",ebur128=peak=true:framelog=quiet,silencedetect=noise=-50dB:duration=2,abuffersink@out");
            while (bare.next()) {
                bare.through(graph, bare.frame);
            }
            bare.through(graph, null);
            avfilter_graph_free(graph);
        }
    }

    /** A small picture at each moment, sought for one by one. */
    public static void pictures(Path film, List<Duration> moments, int side) {
        try (BareFfmpeg bare = new BareFfmpeg(film, AVMEDIA_TYPE_VIDEO)) {
            String source = "buffer@in=width=%d:height=%d:pix_fmt=%d:time_base=1/1000"
                    .formatted(bare.codec.width(), bare.codec.height(), bare.codec.pix_fmt());
            AVFilterGraph graph = graph(
                    source + ",scale=w=%d:h=-1:flags=area+accurate_rnd,format=rgb24,buffersink@out".formatted(side));
            for (Duration moment : moments) {
                long ticks = av_rescale_q(moment.toMillis(), av_make_q(1, 1000), bare.stream.time_base());
                av_seek_frame(bare.file, bare.stream.index(), ticks, AVSEEK_FLAG_BACKWARD);
                avcodec_flush_buffers(bare.codec);
                while (bare.next() && bare.frame.pts() + bare.frame.duration() <= ticks) {
                    av_frame_unref(bare.frame);
                }
                bare.through(graph, bare.frame);
            }
            avfilter_graph_free(graph);
        }
    }

    /** The same pictures by our own way. */
    public static void picturesByOurs(Path film, List<Duration> moments, int side) {
        Frames.each(film, new java.util.TreeSet<>(moments), side, (at, picture) -> true);
    }

    private static AVFilterGraph graph(String chain) {
        AVFilterGraph graph = avfilter_graph_alloc();
        if (avfilter_graph_parse_ptr(graph, chain, new AVFilterInOut(null), new AVFilterInOut(null), null) < 0
                || avfilter_graph_config(graph, null) < 0) {
            throw new IllegalStateException(chain);
        }
        return graph;
    }

    private void through(AVFilterGraph graph, @org.jspecify.annotations.Nullable AVFrame one) {
        AVFilterContext in =
                avfilter_graph_get_filter(graph, one == null || one.width() == 0 ? "abuffer@in" : "buffer@in");
        AVFilterContext sink = avfilter_graph_get_filter(
                graph, one == null || one.width() == 0 ? "abuffersink@out" : "buffersink@out");
        if (av_buffersrc_add_frame(in, one) < 0) {
            throw new IllegalStateException("a frame was refused");
        }
        while (av_buffersink_get_frame(sink, out) >= 0) {
            av_frame_unref(out);
        }
    }

    @Override
    public void close() {
        av_frame_free(frame);
        av_frame_free(out);
        av_packet_free(packet);
        avcodec_free_context(codec);
        avformat_close_input(file);
    }
}
