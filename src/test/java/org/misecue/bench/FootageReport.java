package org.misecue.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Frame;
import org.misecue.footage.BareFfmpeg;
import org.misecue.footage.ContactSheets;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Footage;
import org.misecue.footage.Hush;
import org.misecue.footage.SheetPlan;
import org.misecue.footage.SoundCheck;

/**
 * How long a film's loudness and contact sheets take, beside the same work by FFmpeg's libraries with nothing of ours. Each in
 * turn, five times; told is the median of each, and their ratio. Sheets are drawn and packed as PNG
 * besides, which the bare way does not do.
 */
public final class FootageReport {

    private static final int ROUNDS = 5;

    private FootageReport() {}

    private interface Work {
        void run() throws Exception;
    }

    public static void main(String[] args) throws Exception {
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        Path folder = Files.createTempDirectory("films");
        List<Path> films = args.length == 0
                ? List.of(invented(folder.resolve("film.mp4"), 180))
                : Arrays.stream(args).map(Path::of).toList();
        for (Path film : films) {
            report(film);
        }
    }

    private static void report(Path film) throws Exception {
        FilmInfo info = Footage.probe(film);
        compare(
                film + ", loudness and silences",
                () -> SoundCheck.of(film, Hush.USUAL, at -> true),
                () -> BareFfmpeg.hear(film));
        int pictures = 60;
        List<SheetPlan> plans = IntStream.range(0, pictures / 12)
                .mapToObj(i -> new SheetPlan(
                        i + ".png",
                        "Step " + i,
                        List.of(new SheetPlan.Stretch(
                                info.length().multipliedBy(i).dividedBy(pictures / 12),
                                info.length().multipliedBy(i + 1L).dividedBy(pictures / 12))),
                        12,
                        4))
                .toList();
        List<Duration> moments = IntStream.range(0, pictures)
                .mapToObj(i -> info.length().multipliedBy(2L * i + 1).dividedBy(2L * pictures))
                .toList();
        compare(
                film + ", " + pictures + " pictures",
                () -> BareFfmpeg.picturesByOurs(film, moments, 320),
                () -> BareFfmpeg.pictures(film, moments, 320));
        compare(
                film + ", " + pictures + " pictures on " + plans.size() + " sheets",
                () -> ContactSheets.draw(film, info, plans, at -> true, (plan, png) -> {}),
                () -> BareFfmpeg.pictures(film, moments, 320));
    }

    private static void compare(String what, Work ours, Work bare) throws Exception {
        double[][] seconds = new double[2][ROUNDS];
        for (int round = -1; round < ROUNDS; round++) {
            double first = time(ours);
            double second = time(bare);
            if (round >= 0) { // the first warms up
                seconds[0][round] = first;
                seconds[1][round] = second;
            }
        }
        Arrays.sort(seconds[0]);
        Arrays.sort(seconds[1]);
        double mine = seconds[0][ROUNDS / 2];
        double theirs = seconds[1][ROUNDS / 2];
        System.out.printf(
                Locale.ROOT, "%s: %.2f s, bare FFmpeg %.2f s, ratio %.2f%n", what, mine, theirs, mine / theirs);
    }

    private static double time(Work work) throws Exception {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e9;
    }

    /** Bars that drift under a tone, with a key frame every two seconds. */
    private static Path invented(Path file, int seconds) throws Exception {
        int width = 1280;
        int height = 720;
        try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(file.toFile(), width, height, 2)) {
            recorder.setFormat("mp4");
            recorder.setVideoCodec(avcodec.AV_CODEC_ID_H264);
            recorder.setVideoCodecName("libopenh264");
            recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
            recorder.setFrameRate(25);
            recorder.setVideoBitrate(6_000_000);
            recorder.setGopSize(50);
            recorder.setAudioCodec(avcodec.AV_CODEC_ID_AAC);
            recorder.setSampleRate(48_000);
            recorder.start();
            Frame frame = new Frame(width, height, Frame.DEPTH_UBYTE, 3);
            java.nio.ByteBuffer pixels = (java.nio.ByteBuffer) frame.image[0];
            byte[] row = new byte[3 * width];
            java.nio.ShortBuffer tone = java.nio.ShortBuffer.allocate(2 * 48_000 / 25);
            for (int number = 0; number < seconds * 25; number++) {
                for (int y = 0; y < height; y++) {
                    for (int x = 0; x < row.length; x++) {
                        row[x] = (byte) ((x + 3 * y + 5 * number) / 60 * 37);
                    }
                    pixels.position(y * frame.imageStride);
                    pixels.put(row);
                }
                recorder.record(frame, avutil.AV_PIX_FMT_RGB24);
                for (int i = 0; i < tone.capacity(); i++) {
                    tone.put(i, (short) (3000 * Math.sin(i / 2 * 0.13)));
                }
                recorder.recordSamples(48_000, 2, tone);
            }
            recorder.stop();
        }
        return file;
    }
}
