package org.misecue.footage;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ShortBuffer;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntToLongFunction;
import javax.imageio.ImageIO;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Frame;

/** Makes small films whose every frame shows its own number: eight bars, white for a one and black for a nought. */
final class TestFilm {

    static final int WIDTH = 160;
    static final int HEIGHT = 96;
    static final int SAMPLES = 8000;

    private TestFilm() {}

    /** A film of so many frames at an even rate, with a tone. */
    static Path even(Path file, int frames, FrameRate rate) {
        return write(file, frames, rate, true, number -> micros(rate, number), recorder -> {});
    }

    static Path write(
            Path file,
            int frames,
            FrameRate rate,
            boolean sound,
            IntToLongFunction micros,
            Consumer<FFmpegFrameRecorder> settings) {
        int samples = frames == 0 ? SAMPLES : (int) (micros(rate, frames) * SAMPLES / 1_000_000);
        return write(file, frames, rate, sound ? Optional.of(tone(samples)) : Optional.empty(), micros, settings);
    }

    /** @param sound one channel at {@link #SAMPLES} */
    static Path write(
            Path file,
            int frames,
            FrameRate rate,
            Optional<ShortBuffer> sound,
            IntToLongFunction micros,
            Consumer<FFmpegFrameRecorder> settings) {
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(
                file.toFile(), frames == 0 ? 0 : WIDTH, frames == 0 ? 0 : HEIGHT, sound.isPresent() ? 1 : 0)) {
            recorder.setFormat(file.toString().endsWith(".mkv") ? "matroska" : "mp4");
            recorder.setVideoCodec(avcodec.AV_CODEC_ID_H264);
            recorder.setVideoCodecName("libopenh264");
            recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
            recorder.setFrameRate((double) rate.frames() / rate.seconds());
            recorder.setVideoBitrate(400_000);
            recorder.setGopSize(12);
            recorder.setAudioCodec(avcodec.AV_CODEC_ID_AAC);
            recorder.setSampleRate(SAMPLES);
            settings.accept(recorder);
            recorder.start();
            for (int number = 0; number < frames; number++) {
                recorder.setTimestamp(micros.applyAsLong(number));
                recorder.record(picture(number), avutil.AV_PIX_FMT_RGB24);
            }
            if (sound.isPresent()) {
                recorder.recordSamples(SAMPLES, 1, sound.get());
            }
            recorder.stop();
        } catch (org.bytedeco.javacv.FrameRecorder.Exception e) {
            throw new IllegalStateException(e);
        }
        return file;
    }

    static long micros(FrameRate rate, int number) {
        return 1_000_000L * number * rate.seconds() / rate.frames();
    }

    /** The number that a picture shows, wherever its bars are. */
    static int numberIn(Path png) throws IOException {
        return numberIn(ImageIO.read(png.toFile()));
    }

    static int numberIn(BufferedImage image) {
        int number = 0;
        for (int bar = 0; bar < 8; bar++) {
            int x = (2 * bar + 1) * image.getWidth() / 16;
            int green = image.getRGB(x, image.getHeight() / 2) >> 8 & 0xff;
            number = number << 1 | (green > 128 ? 1 : 0);
        }
        return number;
    }

    private static Frame picture(int number) {
        Frame frame = new Frame(WIDTH, HEIGHT, Frame.DEPTH_UBYTE, 3);
        ByteBuffer pixels = (ByteBuffer) frame.image[0];
        for (int y = 0; y < HEIGHT; y++) {
            for (int x = 0; x < WIDTH; x++) {
                byte grey = (byte) ((number >> 7 - x * 8 / WIDTH & 1) == 1 ? 255 : 0);
                for (int c = 0; c < 3; c++) {
                    pixels.put(y * frame.imageStride + 3 * x + c, grey);
                }
            }
        }
        return frame;
    }

    private static ShortBuffer tone(int samples) {
        ShortBuffer tone = ShortBuffer.allocate(samples);
        for (int i = 0; i < samples; i++) {
            tone.put((short) (8000 * Math.sin(2 * Math.PI * 440 * i / SAMPLES)));
        }
        return tone.flip();
    }
}
