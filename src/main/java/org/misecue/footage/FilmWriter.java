package org.misecue.footage;

import static org.bytedeco.ffmpeg.avformat.AVFormatContext.AVFMT_FLAG_BITEXACT;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_from_context;
import static org.bytedeco.ffmpeg.global.avformat.AVIO_FLAG_WRITE;
import static org.bytedeco.ffmpeg.global.avformat.av_interleaved_write_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_write_trailer;
import static org.bytedeco.ffmpeg.global.avformat.avformat_alloc_output_context2;
import static org.bytedeco.ffmpeg.global.avformat.avformat_free_context;
import static org.bytedeco.ffmpeg.global.avformat.avformat_new_stream;
import static org.bytedeco.ffmpeg.global.avformat.avformat_write_header;
import static org.bytedeco.ffmpeg.global.avformat.avio_closep;
import static org.bytedeco.ffmpeg.global.avformat.avio_open;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_free;
import static org.bytedeco.ffmpeg.global.avutil.av_dict_set;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.bytedeco.ffmpeg.avcodec.AVCodecContext;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;

/** An MP4 file being written: all streams first, then {@link #begin}, packets, {@link #finish}. */
final class FilmWriter implements AutoCloseable {

    static final String COMMENT = "comment";

    private final AVFormatContext context = new AVFormatContext(null);
    private final AVIOContext file = new AVIOContext(null);

    FilmWriter(Path path) {
        String url = "file:" + path.toAbsolutePath();
        written(avformat_alloc_output_context2(context, null, "mp4", url), "preparing an MP4 file");
        written(avio_open(file, url, AVIO_FLAG_WRITE), "opening the file");
        context.pb(file);
        context.flags(context.flags() | AVFMT_FLAG_BITEXACT);
    }

    AVStream newStream(AVCodecContext codec) {
        AVStream stream = avformat_new_stream(context, null);
        avcodec_parameters_from_context(stream.codecpar(), codec);
        stream.time_base(codec.time_base());
        stream.avg_frame_rate(codec.framerate());
        return stream;
    }

    /** Says something in the file itself; nothing if empty. */
    void comment(String text) {
        if (!text.isEmpty()) {
            AVDictionary tags = new AVDictionary(null);
            av_dict_set(tags, COMMENT, text, 0);
            context.metadata(tags);
        }
    }

    void begin() {
        AVDictionary options = new AVDictionary(null);
        // The index goes to the front, so that a browser can begin before it has the whole file.
        av_dict_set(options, "movflags", "+faststart", 0);
        int code = avformat_write_header(context, options);
        av_dict_free(options);
        written(code, "writing the film's head");
    }

    void write(AVPacket packet) {
        written(av_interleaved_write_frame(context, packet), "writing the film");
    }

    void finish() {
        written(av_write_trailer(context), "writing the film's index");
        written(avio_closep(file), "closing the film");
    }

    private static void written(int code, String what) {
        if (code < 0) {
            throw new UncheckedIOException(new IOException(what + " failed with FFmpeg's code " + code));
        }
    }

    @Override
    public void close() {
        if (!file.isNull()) {
            avio_closep(file);
        }
        avformat_free_context(context);
    }
}
