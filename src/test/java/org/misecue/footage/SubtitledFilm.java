package org.misecue.footage;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.bytedeco.ffmpeg.global.avcodec.*;
import static org.bytedeco.ffmpeg.global.avformat.*;
import static org.bytedeco.ffmpeg.global.avutil.*;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bytedeco.ffmpeg.avcodec.AVCodec;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avcodec.AVSubtitle;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.PointerPointer;

/** Films with subtitles inside, put there by FFmpeg; their pictures change once a second. */
public final class SubtitledFilm {

    private static final int MILLIS = 1000;
    private static final FrameRate ONCE_A_SECOND = new FrameRate(1, 1);
    private static final String ASS_HEAD = """
            [Script Info]
            ScriptType: v4.00+

            [V4+ Styles]
            Format: Name, Fontname, Fontsize, PrimaryColour, SecondaryColour, OutlineColour, BackColour, Bold, Italic, \
            Underline, StrikeOut, ScaleX, ScaleY, Spacing, Angle, BorderStyle, Outline, Shadow, Alignment, MarginL, \
            MarginR, MarginV, Encoding
            Style: Default,Arial,16,&Hffffff,&Hffffff,&H0,&H0,0,0,0,0,100,100,0,0,1,1,0,2,10,10,10,0

            [Events]
            Format: Layer, Start, End, Style, Name, MarginL, MarginR, MarginV, Effect, Text
            """;

    private SubtitledFilm() {}

    /** The ways in which films hold subtitles. */
    public enum Kind {
        MOV_TEXT("mp4", AV_CODEC_ID_MOV_TEXT),
        QUICKTIME("mov", AV_CODEC_ID_MOV_TEXT),
        SUBRIP("mkv", AV_CODEC_ID_SUBRIP),
        WEBVTT("mkv", AV_CODEC_ID_WEBVTT),
        ASS("mkv", AV_CODEC_ID_ASS),
        PICTURES("mkv", AV_CODEC_ID_HDMV_PGS_SUBTITLE);

        public final String ending;
        final int codec;

        Kind(String ending, int codec) {
            this.ending = ending;
            this.codec = codec;
        }

        byte[] payload(int number, String text) {
            byte[] bytes = text.getBytes(UTF_8);
            return switch (this) {
                case MOV_TEXT, QUICKTIME -> withLength(bytes);
                case ASS -> (number + ",0,Default,,0,0,0,," + text).getBytes(UTF_8);
                default -> bytes;
            };
        }

        String head() {
            return this == ASS ? ASS_HEAD : "";
        }
    }

    static byte[] withLength(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes.length >> 8);
        out.write(bytes.length);
        out.writeBytes(bytes);
        return out.toByteArray();
    }

    /** A subtitle as it goes into the film. */
    public record Line(long from, long millis, String text) {}

    /** A track of subtitles. */
    public record Lines(Kind kind, String language, List<Line> lines) {}

    /** @param tracks of the first one's container */
    public static Path write(Path file, int seconds, Lines... tracks) throws IOException {
        Path plain = file.resolveSibling("plain-" + file.getFileName());
        TestFilm.write(plain, seconds, ONCE_A_SECOND, false, number -> 1_000_000L * number, recorder -> {});
        remux(plain, file, List.of(tracks));
        Files.delete(plain);
        return file;
    }

    private static void remux(Path from, Path to, List<Lines> tracks) {
        AVFormatContext in = new AVFormatContext(null);
        avformat_open_input(in, from.toString(), null, (AVDictionary) null);
        avformat_find_stream_info(in, (PointerPointer<?>) null);
        AVFormatContext out = new AVFormatContext(null);
        avformat_alloc_output_context2(out, null, null, to.toString());
        for (int i = 0; i < in.nb_streams(); i++) {
            AVStream copy = avformat_new_stream(out, null);
            avcodec_parameters_copy(copy.codecpar(), in.streams(i).codecpar());
            copy.codecpar().codec_tag(0);
            copy.time_base(in.streams(i).time_base());
        }
        tracks.forEach(track -> newStream(out, track));
        AVIOContext file = new AVIOContext(null);
        avio_open(file, to.toString(), AVIO_FLAG_WRITE);
        out.pb(file);
        done(avformat_write_header(out, (AVDictionary) null));
        List<Integer> next = new ArrayList<>(tracks.stream().map(track -> 0).toList());
        AVPacket packet = av_packet_alloc();
        while (av_read_frame(in, packet) >= 0) {
            AVStream source = in.streams(packet.stream_index());
            subtitles(
                    out,
                    in.nb_streams(),
                    tracks,
                    next,
                    av_rescale_q(packet.dts(), source.time_base(), av_make_q(1, MILLIS)));
            av_packet_rescale_ts(
                    packet,
                    source.time_base(),
                    out.streams(packet.stream_index()).time_base());
            packet.pos(-1);
            done(av_interleaved_write_frame(out, packet));
        }
        subtitles(out, in.nb_streams(), tracks, next, Long.MAX_VALUE);
        done(av_write_trailer(out));
        avio_closep(file);
        av_packet_free(packet);
        avformat_free_context(out);
        avformat_close_input(in);
    }

    private static void newStream(AVFormatContext out, Lines track) {
        AVStream stream = avformat_new_stream(out, null);
        stream.time_base(av_make_q(1, MILLIS));
        stream.codecpar().codec_type(AVMEDIA_TYPE_SUBTITLE);
        stream.codecpar().codec_id(track.kind().codec);
        byte[] head = track.kind().head().getBytes(UTF_8);
        if (head.length > 0) {
            BytePointer data = new BytePointer(av_mallocz(head.length + AV_INPUT_BUFFER_PADDING_SIZE));
            data.put(head);
            stream.codecpar().extradata(data).extradata_size(head.length);
        }
        if (!track.language().isEmpty()) {
            AVDictionary tags = new AVDictionary(null);
            av_dict_set(tags, "language", track.language(), 0);
            stream.metadata(tags);
        }
    }

    /** Those that begin up to a time. */
    private static void subtitles(AVFormatContext out, int first, List<Lines> tracks, List<Integer> next, long until) {
        for (int track = 0; track < tracks.size(); track++) {
            List<Line> lines = tracks.get(track).lines();
            while (next.get(track) < lines.size() && lines.get(next.get(track)).from() <= until) {
                int number = next.get(track);
                Line line = lines.get(number);
                AVStream stream = out.streams(first + track);
                AVPacket packet = packet(tracks.get(track).kind().payload(number, line.text()));
                packet.stream_index(first + track)
                        .pts(line.from())
                        .dts(line.from())
                        .duration(line.millis());
                av_packet_rescale_ts(packet, av_make_q(1, MILLIS), stream.time_base());
                done(av_interleaved_write_frame(out, packet));
                av_packet_free(packet);
                next.set(track, number + 1);
            }
        }
    }

    private static AVPacket packet(byte[] payload) {
        AVPacket packet = av_packet_alloc();
        av_new_packet(packet, payload.length);
        packet.data().put(payload);
        return packet;
    }

    private static void done(int code) {
        if (code < 0) {
            throw new IllegalStateException("FFmpeg's code " + code);
        }
    }

    /** What FFmpeg's own decoder makes of a packet's text: without its markup, line breaks as spaces. */
    static String decoded(Kind kind, byte[] payload) {
        AVCodec decoder = avcodec_find_decoder(kind.codec);
        AVCodecContext codec = avcodec_alloc_context3(decoder);
        byte[] head = kind.head().getBytes(UTF_8);
        if (head.length > 0) {
            BytePointer data = new BytePointer(av_mallocz(head.length + AV_INPUT_BUFFER_PADDING_SIZE));
            data.put(head);
            codec.extradata(data).extradata_size(head.length);
        }
        codec.pkt_timebase(av_make_q(1, MILLIS));
        done(avcodec_open2(codec, decoder, (AVDictionary) null));
        AVPacket packet = packet(payload);
        packet.pts(0).duration(MILLIS);
        AVSubtitle subtitle = new AVSubtitle();
        int[] got = new int[1];
        done(avcodec_decode_subtitle2(codec, subtitle, got, packet));
        StringBuilder text = new StringBuilder();
        for (int i = 0; got[0] != 0 && i < subtitle.num_rects(); i++) {
            String[] fields = subtitle.rects(i).ass().getString(UTF_8).split(",", 9);
            text.append(fields[fields.length - 1]).append(' ');
        }
        avsubtitle_free(subtitle);
        av_packet_free(packet);
        avcodec_free_context(codec);
        return text.toString()
                .replaceAll("\\{[^{}]*\\}", "")
                .replaceAll("\\\\[Nnh]", " ")
                .replaceAll("\\s+", " ")
                .strip();
    }
}
