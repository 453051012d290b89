package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avfilter.av_buffersink_get_frame;
import static org.bytedeco.ffmpeg.global.avfilter.av_buffersink_get_time_base;
import static org.bytedeco.ffmpeg.global.avfilter.av_buffersrc_add_frame;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_alloc;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_config;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_free;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_get_filter;
import static org.bytedeco.ffmpeg.global.avfilter.avfilter_graph_parse_ptr;
import static org.bytedeco.ffmpeg.global.avutil.av_channel_layout_describe;
import static org.bytedeco.ffmpeg.global.avutil.av_get_sample_fmt_name;
import static org.bytedeco.ffmpeg.global.avutil.av_opt_get_double;

import java.nio.charset.StandardCharsets;
import org.bytedeco.ffmpeg.avfilter.AVFilterContext;
import org.bytedeco.ffmpeg.avfilter.AVFilterGraph;
import org.bytedeco.ffmpeg.avfilter.AVFilterInOut;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.avutil.AVRational;
import org.jspecify.annotations.Nullable;

/** A chain of FFmpeg filters, from decoded frames to frames as an encoder wants them. */
final class Filter implements AutoCloseable {

    private final AVFilterGraph graph = avfilter_graph_alloc();
    private final AVFilterContext in;
    private final AVFilterContext out;

    private Filter(String source, String chain, String sink) {
        String whole = source + "," + chain + "," + sink + "@out";
        AVFilterInOut unused = new AVFilterInOut(null);
        Ffmpeg.done(
                avfilter_graph_parse_ptr(graph, whole, unused, new AVFilterInOut(null), null), "the filter " + whole);
        Ffmpeg.done(avfilter_graph_config(graph, null), "the filter " + whole);
        in = avfilter_graph_get_filter(graph, source.substring(0, source.indexOf('=')));
        out = avfilter_graph_get_filter(graph, sink + "@out");
    }

    /** For pictures like the given one. */
    static Filter pictures(AVFrame like, AVRational base, String chain) {
        AVRational aspect = like.sample_aspect_ratio();
        String source = "buffer@in=width=%d:height=%d:pix_fmt=%d:time_base=%s:pixel_aspect=%s:colorspace=%d:range=%d"
                .formatted(
                        like.width(),
                        like.height(),
                        like.format(),
                        fraction(base),
                        aspect.num() == 0 ? "1/1" : fraction(aspect),
                        like.colorspace(),
                        like.color_range());
        return new Filter(source, chain, "buffersink");
    }

    /** For sound like the given frame. */
    static Filter sound(AVFrame like, AVRational base, String chain) {
        byte[] layout = new byte[64];
        int length = Ffmpeg.done(
                av_channel_layout_describe(like.ch_layout(), layout, layout.length), "describing the channels");
        String source = "abuffer@in=sample_rate=%d:sample_fmt=%s:channel_layout=%s:time_base=%s"
                .formatted(
                        like.sample_rate(),
                        av_get_sample_fmt_name(like.format()).getString(),
                        new String(layout, 0, length - 1, StandardCharsets.US_ASCII),
                        fraction(base));
        return new Filter(source, chain, "abuffersink");
    }

    private static String fraction(AVRational value) {
        return value.num() + "/" + value.den();
    }

    /** The filters that stand a picture upright, with square pixels. */
    static String upright(int turn) {
        return "scale=w=round(iw*sar):h=ih:flags=bicubic+accurate_rnd,setsar=1" + turning(turn);
    }

    /**
     * The same, no wider than a width, in one quick step and with even sides, as encoders want them; what is thrown away is
     * not turned first.
     */
    static String small(int turn, int width) {
        String side = turn % 180 == 0 ? "iw*sar" : "ih";
        String shrink = "min(1,%d/(%s))".formatted(width, side);
        return "scale=w='2*max(1,round(iw*sar*%1$s/2))':h='2*max(1,round(ih*%1$s/2))':flags=bilinear,setsar=1,format=yuv420p"
                        .formatted(shrink)
                + turning(turn);
    }

    private static String turning(int turn) {
        return switch (turn) {
            case 90 -> ",transpose=clock";
            case 180 -> ",hflip,vflip";
            case 270 -> ",transpose=cclock";
            default -> "";
        };
    }

    /** Takes a frame over; null says that there are no more. */
    void push(@Nullable AVFrame frame) {
        Ffmpeg.done(av_buffersrc_add_frame(in, frame), "filtering a frame");
    }

    /** Gives the next finished frame, or false when the filter wants more first. */
    boolean pull(AVFrame frame) {
        return av_buffersink_get_frame(out, frame) >= 0;
    }

    /** The ticks in which finished frames count their times. */
    AVRational base() {
        return av_buffersink_get_time_base(out);
    }

    /** What one of the chain's filters, named {@code kind@name}, has found out until now. */
    double value(String filter, String option) {
        double[] value = new double[1];
        Ffmpeg.done(
                av_opt_get_double(avfilter_graph_get_filter(graph, filter).priv(), option, 0, value),
                "reading " + option);
        return value[0];
    }

    @Override
    public void close() {
        avfilter_graph_free(graph);
    }
}
