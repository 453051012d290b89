package org.misecue.bench;

import java.io.IOException;
import java.nio.ShortBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.misecue.footage.Babble;
import org.misecue.footage.BareFfmpeg;
import org.misecue.footage.Beside;
import org.misecue.footage.CommonSound;
import org.misecue.footage.FilmInfo;
import org.misecue.footage.Footage;
import org.misecue.footage.FrameRate;
import org.misecue.footage.Levels;
import org.misecue.footage.Microphone;
import org.misecue.footage.Offset;
import org.misecue.footage.Timecode;

/**
 * How often two films are brought together by their sound, over pairs invented from a seed: a voice in a room, heard by two
 * microphones of other tone, level, rate, clock and noise, with 30 to 100 % of a minute in common; and pairs that have
 * nothing in common. Then the same with time codes that say how they lie, rightly or of two days. Then how long it takes for two films of an hour, beside FFmpeg decoding the same two sound tracks.
 * {@code [--pairs N] [--seed N] [--minutes N]}
 */
public final class CameraReport {

    private static final double HALF_FRAME = 0.02;
    private static final int[] RATES = {8_000, 16_000, 44_100, 48_000};
    private static final double SECONDS = 60;
    private static final FrameRate PAL = new FrameRate(25, 1);

    private final Path folder;
    private final int pairs;
    private final long seed;

    private enum Outcome {
        RIGHT,
        NOT_KNOWN,
        WRONG
    }

    private CameraReport(Path folder, int pairs, long seed) {
        this.folder = folder;
        this.pairs = pairs;
        this.seed = seed;
    }

    public static void main(String[] args) throws Exception {
        avutil.av_log_set_level(avutil.AV_LOG_QUIET);
        Path folder = Files.createTempDirectory("cameras");
        CameraReport report = new CameraReport(folder, number(args, "--pairs", 40), number(args, "--seed", 1));
        for (int noise : new int[] {40, 20, 6, 0, -6, -12}) {
            report.pairs("noise %d dB under the voice".formatted(noise), noise, true);
        }
        report.pairs("nothing in common, noise 20 dB under", 20, false);
        for (int noise : new int[] {40, 20, 6, 0, -6, -12}) {
            report.timecodes(noise, true);
            report.timecodes(noise, false);
        }
        int minutes = number(args, "--minutes", 60);
        if (minutes > 0) {
            report.time(minutes);
        }
    }

    private static int number(String[] args, String name, int usual) {
        int at = Arrays.asList(args).indexOf(name);
        return at < 0 ? usual : Integer.parseInt(args[at + 1]);
    }

    /** Two films that were made of one voice, or of two. */
    private record Made(CommonSound.Listened one, CommonSound.Listened two, double late) {}

    private Made make(int pair, double noise, boolean common) {
        Random random = new Random(seed * 1_000_003 + pair);
        double shared = SECONDS * (0.3 + 0.7 * random.nextDouble());
        double late = (random.nextBoolean() ? 1 : -1) * (SECONDS - shared);
        float[] voice = Babble.talk(random.nextLong(), 2 * SECONDS);
        float[] other = common ? voice : Babble.talk(random.nextLong(), 2 * SECONDS);
        Microphone one = microphone(Math.max(0, -late), noise, random);
        Microphone two = microphone(Math.max(0, late), noise, random).running(100 * random.nextDouble() - 50);
        return new Made(listen(one.record(voice, file("one"))), listen(two.record(other, file("two"))), late);
    }

    private void pairs(String what, double noise, boolean common) {
        int[] counts = new int[Outcome.values().length];
        double worst = 0;
        for (int pair = 0; pair < pairs; pair++) {
            Made made = make(pair, noise, common);
            Optional<Offset> offset = CommonSound.beside(made.one, made.two).offset();
            double error = offset.map(found -> Math.abs(found.later().toNanos() / 1e9 - made.late))
                    .orElse(0.0);
            Outcome outcome = offset.isEmpty()
                    ? Outcome.NOT_KNOWN
                    : common && error <= HALF_FRAME ? Outcome.RIGHT : Outcome.WRONG;
            worst = outcome == Outcome.RIGHT ? Math.max(worst, error) : worst;
            counts[outcome.ordinal()]++;
        }
        System.out.printf(
                Locale.ROOT,
                "%s: %d pairs, %d right (largest error %.1f ms), %d not known, %d wrong and sure%n",
                what,
                pairs,
                counts[0],
                worst * 1000,
                counts[1],
                counts[2]);
    }

    /** Labels of 25 frames a second, as clocks wrote them that were set to one time on one day or on two. */
    private void timecodes(double noise, boolean sameDay) {
        int agreed = 0;
        int believed = 0;
        int denied = 0;
        for (int pair = 0; pair < pairs; pair++) {
            Made made = make(pair, noise, sameDay);
            Beside beside = CommonSound.beside(labelled(made.one, 0), labelled(made.two, made.late));
            denied += beside.denied().isPresent() ? 1 : 0;
            believed += beside.isByTimecodeAlone() ? 1 : 0;
            agreed += beside.denied().isEmpty() && !beside.isByTimecodeAlone() ? 1 : 0;
        }
        System.out.printf(
                Locale.ROOT,
                "time codes of %s, noise %.0f dB under the voice: %d pairs, sound agrees with %d, denies %d, cannot tell %d%n",
                sameDay ? "one day" : "two days",
                noise,
                pairs,
                agreed,
                denied,
                believed);
    }

    private static CommonSound.Listened labelled(CommonSound.Listened film, double at) {
        Timecode noon = Timecode.parse("12:00:00:00", PAL);
        Timecode starts = new Timecode(PAL, false, noon.frame() + (long) Math.floor(at * 25));
        FilmInfo info = new FilmInfo(film.info().length(), film.info().tracks(), Optional.of(starts));
        return new CommonSound.Listened(film.film(), info, film.levels());
    }

    private static Microphone microphone(double late, double noise, Random random) {
        Microphone microphone = Microphone.good(late, SECONDS)
                .softer(20 * random.nextDouble())
                .noisy(noise)
                .at(RATES[random.nextInt(RATES.length)])
                .in(random.nextBoolean() ? 0.6 * random.nextDouble() : 0)
                .like(random.nextLong());
        return random.nextInt(3) == 0 ? microphone.asTinny() : microphone;
    }

    private Path file(String name) {
        return folder.resolve(name + ".wav");
    }

    private static CommonSound.Listened listen(Path film) {
        return new CommonSound.Listened(
                film, Footage.probe(film), Levels.of(film, at -> true).orElseThrow());
    }

    /** Films of stereo AAC, the second begun 61.234 s later by a clock that runs 20 millionths fast. */
    private void time(int minutes) throws IOException {
        float[] voice = Babble.talk(seed, minutes * 60.0 + 70);
        Path one = aac(Microphone.good(0, minutes * 60.0).noisy(20).record(voice, file("one")), "one.mp4");
        Path two = aac(
                Microphone.good(61.234, minutes * 60.0)
                        .noisy(6)
                        .running(20)
                        .like(2)
                        .record(voice, file("two")),
                "two.mp4");
        for (int round = 0; round < 3; round++) {
            long start = System.nanoTime();
            BareFfmpeg.decode(one);
            BareFfmpeg.decode(two);
            double bare = (System.nanoTime() - start) / 1e9;
            start = System.nanoTime();
            CommonSound.Listened first = listen(one);
            CommonSound.Listened second = listen(two);
            double listening = (System.nanoTime() - start) / 1e9;
            start = System.nanoTime();
            Optional<Offset> offset = CommonSound.beside(first, second).offset();
            double finding = (System.nanoTime() - start) / 1e9;
            System.out.printf(
                    Locale.ROOT,
                    "two films of %d minutes: listening %.1f s, finding %.1f s, bare decoding %.1f s, ratio %.2f; %s%n",
                    minutes,
                    listening,
                    finding,
                    bare,
                    (listening + finding) / bare,
                    offset);
        }
    }

    private Path aac(Path wav, String name) throws IOException {
        Path film = folder.resolve(name);
        byte[] bytes = Files.readAllBytes(wav);
        try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(film.toFile(), 2)) {
            recorder.setFormat("mp4");
            recorder.setAudioCodec(avcodec.AV_CODEC_ID_AAC);
            recorder.setAudioBitrate(192_000);
            recorder.setSampleRate(48_000);
            recorder.start();
            ShortBuffer stereo = ShortBuffer.allocate(2 * 48_000);
            for (int at = 44; at + 96_000 <= bytes.length; at += 96_000) {
                for (int i = 0; i < 48_000; i++) {
                    short sample = (short) (bytes[at + 2 * i] & 0xff | bytes[at + 2 * i + 1] << 8);
                    stereo.put(2 * i, sample).put(2 * i + 1, sample);
                }
                recorder.recordSamples(48_000, 2, stereo);
            }
            recorder.stop();
        }
        return film;
    }
}
