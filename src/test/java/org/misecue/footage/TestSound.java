package org.misecue.footage;

import static org.bytedeco.ffmpeg.global.avcodec.av_packet_alloc;
import static org.bytedeco.ffmpeg.global.avcodec.av_packet_free;
import static org.bytedeco.ffmpeg.global.avcodec.avcodec_parameters_copy;
import static org.bytedeco.ffmpeg.global.avformat.AVIO_FLAG_WRITE;
import static org.bytedeco.ffmpeg.global.avformat.av_interleaved_write_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_read_frame;
import static org.bytedeco.ffmpeg.global.avformat.av_write_trailer;
import static org.bytedeco.ffmpeg.global.avformat.avformat_alloc_output_context2;
import static org.bytedeco.ffmpeg.global.avformat.avformat_free_context;
import static org.bytedeco.ffmpeg.global.avformat.avformat_new_stream;
import static org.bytedeco.ffmpeg.global.avformat.avformat_write_header;
import static org.bytedeco.ffmpeg.global.avformat.avio_closep;
import static org.bytedeco.ffmpeg.global.avformat.avio_open;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bytedeco.ffmpeg.avcodec.AVPacket;
import org.bytedeco.ffmpeg.avformat.AVFormatContext;
import org.bytedeco.ffmpeg.avformat.AVIOContext;
import org.bytedeco.ffmpeg.avformat.AVStream;
import org.bytedeco.ffmpeg.avutil.AVDictionary;

/** Sound that is drawn sample by sample: sines at known levels, in WAV of 16 bits. */
final class TestSound {

    static final int RATE = 48_000;

    private final List<Part> parts = new ArrayList<>();
    private final int channels;

    /** A channel without a level is silent. */
    private record Part(double seconds, double hertz, double phase, double[] dbfs) {}

    TestSound(int channels) {
        this.channels = channels;
    }

    /** A sine at these peak levels in dBFS, one for each channel. */
    TestSound sine(double seconds, double hertz, double... dbfs) {
        return sine(seconds, hertz, 0, dbfs);
    }

    TestSound sine(double seconds, double hertz, double phase, double[] dbfs) {
        parts.add(new Part(seconds, hertz, phase, dbfs));
        return this;
    }

    TestSound nothing(double seconds) {
        return sine(seconds, 0);
    }

    /** Written as WAVE_FORMAT_EXTENSIBLE, so that loudspeakers have names: front left and right, centre, LFE, back. */
    Path wav(Path file) {
        int frames = parts.stream()
                .mapToInt(part -> (int) Math.round(part.seconds * RATE))
                .sum();
        int bytes = frames * channels * 2;
        ByteBuffer out = ByteBuffer.allocate(68 + bytes).order(ByteOrder.LITTLE_ENDIAN);
        out.put(ascii("RIFF")).putInt(60 + bytes).put(ascii("WAVEfmt ")).putInt(40);
        out.putShort((short) 0xFFFE).putShort((short) channels).putInt(RATE);
        out.putInt(RATE * channels * 2).putShort((short) (channels * 2)).putShort((short) 16);
        out.putShort((short) 22).putShort((short) 16).putInt(channels == 1 ? 4 : (1 << channels) - 1);
        out.putShort((short) 1).put(new byte[] {0, 0, 0, 0, 0x10, 0, (byte) 0x80, 0, 0, (byte) 0xAA, 0, 0x38});
        out.put((byte) 0x9B).put((byte) 0x71).put(ascii("data")).putInt(bytes);
        parts.forEach(part -> draw(part, out));
        try {
            return Files.write(file, out.array());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void draw(Part part, ByteBuffer out) {
        double[] heights = new double[channels];
        for (int channel = 0; channel < part.dbfs.length; channel++) {
            heights[channel] = 32767 * Math.pow(10, part.dbfs[channel] / 20);
        }
        for (int i = 0; i < Math.round(part.seconds * RATE); i++) {
            double swing = Math.sin(2 * Math.PI * part.hertz * i / RATE + part.phase);
            for (double height : heights) {
                out.putShort((short) Math.round(height * swing));
            }
        }
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }

    /** One file with the first track of each, in their order; nothing is coded anew. */
    static Path together(Path file, Path... sources) {
        AVFormatContext out = new AVFormatContext(null);
        avformat_alloc_output_context2(out, null, null, file.toString());
        List<Reel> reels = new ArrayList<>();
        for (Path source : sources) {
            Reel reel = Reel.open(source);
            AVStream stream = avformat_new_stream(out, null);
            avcodec_parameters_copy(stream.codecpar(), reel.context().streams(0).codecpar());
            stream.codecpar().codec_tag(0);
            reels.add(reel);
        }
        AVIOContext io = new AVIOContext(null);
        Ffmpeg.done(avio_open(io, file.toString(), AVIO_FLAG_WRITE), "opening");
        out.pb(io);
        Ffmpeg.done(avformat_write_header(out, (AVDictionary) null), "the header");
        AVPacket packet = av_packet_alloc();
        for (int track = 0; track < reels.size(); track++) {
            AVStream from = reels.get(track).context().streams(0);
            while (av_read_frame(reels.get(track).context(), packet) >= 0) {
                if (packet.stream_index() == 0) {
                    packet.stream_index(track);
                    org.bytedeco.ffmpeg.global.avcodec.av_packet_rescale_ts(
                            packet, from.time_base(), out.streams(track).time_base());
                    av_interleaved_write_frame(out, packet);
                }
            }
        }
        av_packet_free(packet);
        av_write_trailer(out);
        avio_closep(out.pb());
        avformat_free_context(out);
        reels.forEach(Reel::close);
        return file;
    }
}
