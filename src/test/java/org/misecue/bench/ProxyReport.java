package org.misecue.bench;

import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Frame;
import org.misecue.footage.Footage;
import org.misecue.footage.Proxy;

/**
 * How much faster than it plays a film is copied for browsers, beside the same work done with JavaCV's grabber and recorder.
 * Measures the films that are named, or an invented minute in full HD.
 */
public final class ProxyReport {

    private static final int WIDTH = 1920;
    private static final int HEIGHT = 1080;
    private static final int RATE = 25;

    private ProxyReport() {}

    public static void main(String[] args) throws Exception {
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        Path folder = Files.createTempDirectory("proxies");
        if (args.length == 0) {
            report(invented(folder.resolve("film.mp4"), 60), folder);
        }
        for (String film : args) {
            report(Path.of(film), folder);
        }
    }

    private static void report(Path film, Path folder) throws Exception {
        double length = Footage.probe(film).length().toMillis() / 1000.0;
        for (int round = 0; round < 3; round++) {
            Path proxy = folder.resolve("proxy.mp4");
            long start = System.nanoTime();
            Proxy.make(film, proxy, "", at -> true);
            double ours = (System.nanoTime() - start) / 1e9;
            start = System.nanoTime();
            bare(film, folder.resolve("bare.mp4"));
            double bare = (System.nanoTime() - start) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "%s: %.1f s of film (%d MB) in %.1f s, %.1f times as fast as it plays, %d MB; bare %.1f s, %.1f times%n",
                    film.getFileName(),
                    length,
                    Files.size(film) >> 20,
                    ours,
                    length / ours,
                    Files.size(proxy) >> 20,
                    bare,
                    length / bare);
        }
    }

    /** Decoded, made smaller and encoded, with nothing of ours. */
    private static void bare(Path film, Path out) throws Exception {
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(film.toFile())) {
            grabber.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
            grabber.start();
            int height = 960 * grabber.getImageHeight() / grabber.getImageWidth() / 2 * 2;
            try (FFmpegFrameRecorder recorder =
                    new FFmpegFrameRecorder(out.toFile(), 960, height, grabber.getAudioChannels())) {
                settings(recorder, grabber.getFrameRate(), (int) (0.12 * 960 * height * grabber.getFrameRate()));
                recorder.setSampleRate(grabber.getSampleRate() > 0 ? grabber.getSampleRate() : 48000);
                recorder.setGopSize((int) Math.round(grabber.getFrameRate()));
                recorder.start();
                for (Frame frame = grabber.grab(); frame != null; frame = grabber.grab()) {
                    recorder.record(frame, avutil.AV_PIX_FMT_YUV420P);
                }
                recorder.stop();
            }
        }
    }

    private static void settings(FFmpegFrameRecorder recorder, double rate, int bits) {
        recorder.setFormat("mp4");
        recorder.setVideoCodec(avcodec.AV_CODEC_ID_H264);
        recorder.setVideoCodecName("libopenh264");
        recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
        recorder.setFrameRate(rate);
        recorder.setVideoBitrate(bits);
        recorder.setVideoOption("threads", "1");
        recorder.setAudioCodec(avcodec.AV_CODEC_ID_AAC);
    }

    /** A grainy picture that drifts, as dense as a camera's. */
    private static Path invented(Path file, int seconds) throws Exception {
        byte[] grain = new byte[3 * (WIDTH + RATE * seconds) * 97];
        new Random(3).nextBytes(grain);
        try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(file.toFile(), WIDTH, HEIGHT, 0)) {
            settings(recorder, RATE, 20_000_000);
            recorder.setGopSize(12);
            recorder.start();
            Frame frame = new Frame(WIDTH, HEIGHT, Frame.DEPTH_UBYTE, 3);
            ByteBuffer pixels = (ByteBuffer) frame.image[0];
            byte[] row = new byte[3 * WIDTH];
            for (int number = 0; number < seconds * RATE; number++) {
                for (int y = 0; y < HEIGHT; y++) {
                    int from = 3 * (number + (y / 9) % 97 * 13 % 97);
                    for (int x = 0; x < row.length; x++) {
                        row[x] = (byte) (96 + (x + y + 3 * number) / 40 % 64 + (grain[from + x / 6] & 15));
                    }
                    pixels.position(y * frame.imageStride);
                    pixels.put(row);
                }
                recorder.record(frame, avutil.AV_PIX_FMT_RGB24);
            }
            recorder.stop();
        }
        return file;
    }
}
