package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntToLongFunction;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Frame;
import org.bytedeco.javacv.FrameGrabber;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.misecue.notice.BadInput;

class ProxyTest {

    private static final FrameRate PAL = new FrameRate(25, 1);
    private static final FrameRate NTSC = new FrameRate(30000, 1001);
    private static final int FRAMES = 61;
    private static final Lookout TO_THE_END = at -> true;

    private static final Map<Film, Pair> PAIRS = new EnumMap<>(Film.class);

    @TempDir
    static Path all;

    @TempDir
    Path folder;

    private record Pair(Path film, Path proxy) {}

    /** What comes out of cameras, telephones and edits. */
    private enum Film {
        EVEN("film.mp4", PAL, 0, number -> 40_000L * number, recorder -> {}),
        NTSC_29_97("film.mp4", NTSC, 0, number -> TestFilm.micros(NTSC, number), recorder -> {}),
        CINEMA_23_976(
                "film.mkv",
                new FrameRate(24000, 1001),
                0,
                number -> TestFilm.micros(new FrameRate(24000, 1001), number),
                recorder -> {}),
        VARIABLE(
                "film.mp4", new FrameRate(240, 1), 0, number -> 33_000L * number + number % 5 * 6_000L, recorder -> {}),
        LONG_PAUSES("film.mp4", PAL, 0, number -> 40_000L * number + number / 20 * 2_500_000L, recorder -> {}),
        LATE_START("film.mkv", PAL, 0, number -> 2_080_000L + 40_000L * number, recorder -> {}),
        WIDE("film.mp4", PAL, 0, number -> 40_000L * number, recorder -> {
            recorder.setImageWidth(1280);
            recorder.setImageHeight(722);
        }),
        ODD_SIDES("film.mkv", PAL, 0, number -> 40_000L * number, recorder -> {
            recorder.setVideoCodecName("ffv1");
            recorder.setVideoCodec(avcodec.AV_CODEC_ID_FFV1);
            recorder.setImageWidth(163);
            recorder.setImageHeight(97);
        }),
        TEN_BIT("film.mov", PAL, 0, number -> 40_000L * number, CameraFile::prores),
        UPRIGHT("film.mp4", PAL, 90, number -> 40_000L * number, recorder -> recorder.setDisplayRotation(90)),
        UPSIDE_DOWN("film.mp4", PAL, 180, number -> 40_000L * number, recorder -> recorder.setDisplayRotation(180)),
        OTHER_SIDE("film.mp4", PAL, 270, number -> 40_000L * number, recorder -> recorder.setDisplayRotation(-90));

        final String file;
        final FrameRate rate;
        final int turn;
        final IntToLongFunction micros;
        final Consumer<FFmpegFrameRecorder> settings;

        Film(String file, FrameRate rate, int turn, IntToLongFunction micros, Consumer<FFmpegFrameRecorder> settings) {
            this.file = file;
            this.rate = rate;
            this.turn = turn;
            this.micros = micros;
            this.settings = settings;
        }

        Path shoot(Path folder) {
            return TestFilm.write(folder.resolve(file), FRAMES, rate, true, micros, settings);
        }

        /** Filmed and copied once for all tests. */
        Pair pair() {
            return PAIRS.computeIfAbsent(this, kind -> {
                Path film = shoot(all.resolve(name()).toFile().mkdir() ? all.resolve(name()) : all);
                Path proxy = film.resolveSibling("proxy.mp4");
                assertThat(Proxy.make(film, proxy, "", TO_THE_END)).isTrue();
                return new Pair(film, proxy);
            });
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_proxy_shows_each_frame_at_the_film_s_own_time(Film kind) throws IOException {
        Path film = kind.pair().film();
        Path proxy = kind.pair().proxy();

        List<Shown> original = frames(film, kind.turn);
        assertThat(original).hasSize(FRAMES);
        List<Shown> copied = frames(proxy, kind.turn);
        assertThat(copied)
                .extracting(Shown::number)
                .isEqualTo(original.stream().map(Shown::number).toList());
        for (int i = 0; i < original.size(); i++) {
            // Clocks that count in thousandths, as Matroska's, round.
            assertThat(Math.abs(copied.get(i).micros() - original.get(i).micros()))
                    .isLessThan(1_000);
        }
        assertThat(Browsers.objection(proxy)).isEmpty();
        assertThat(copied.get(0).micros()).isZero();
    }

    @ParameterizedTest
    @EnumSource
    void a_still_of_a_moment_is_the_same_from_both(Film kind) throws IOException {
        Path film = kind.pair().film();
        Path proxy = kind.pair().proxy();
        long millis = Footage.probe(film).length().toMillis();
        for (long at = 7; at < Math.min(2_400, millis); at += 353) {
            BufferedImage one = still(film, at);
            BufferedImage other = still(proxy, at);
            assertThat(number(other, kind.turn)).as("at %d ms", at).isEqualTo(number(one, kind.turn));
            assertThat((double) other.getWidth() / other.getHeight())
                    .isCloseTo((double) one.getWidth() / one.getHeight(), org.assertj.core.data.Offset.offset(0.03));
            // Encoders want even sides.
            assertThat(Math.abs(other.getWidth() - Math.min(960, one.getWidth())))
                    .isLessThanOrEqualTo(1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void there_is_a_key_frame_in_every_second_and_the_index_is_in_front(Film kind) throws IOException {
        Path proxy = kind.pair().proxy();
        long second = -1;
        for (Shown frame : frames(proxy, kind.turn)) {
            if (frame.micros() / 1_000_000 > second) {
                assertThat(frame.key()).as("at %d", frame.micros()).isTrue();
                second = frame.micros() / 1_000_000;
            }
        }
        String bytes = Files.readString(proxy, StandardCharsets.ISO_8859_1);
        assertThat(bytes.indexOf("moov")).isBetween(1, bytes.indexOf("mdat"));
    }

    @Test
    void a_sound_recording_stays_one() throws IOException {
        Path sound = TestFilm.write(folder.resolve("sound.mp4"), 0, PAL, true, number -> 0, recorder -> {});
        Path proxy = folder.resolve("proxy.mp4");

        Proxy.make(sound, proxy, "", TO_THE_END);

        FilmInfo info = Footage.probe(proxy);
        assertThat(info.picture()).isEmpty();
        assertThat(info.sound()).contains(new Track.Sound("aac", 48000, 1));
        assertThat(info.length()).isBetween(Duration.ofMillis(990), Duration.ofMillis(1030));
    }

    @Test
    void sound_keeps_its_place_under_the_picture() throws IOException {
        Path film = Film.TEN_BIT.pair().film();
        Path proxy = Film.TEN_BIT.pair().proxy();

        assertThat(Sound.firstLoud(proxy)).isBetween(-0.002, 0.002);
        assertThat(Footage.probe(proxy)
                        .length()
                        .minus(Footage.probe(film).length())
                        .abs())
                .isLessThan(Duration.ofMillis(25));
    }

    @Test
    void the_same_film_gives_the_same_bytes_and_keeps_its_mark() throws IOException {
        Path film = Film.NTSC_29_97.shoot(folder);
        Path proxy = folder.resolve("proxy.mp4");
        Proxy.make(film, proxy, "mark 1", TO_THE_END);
        byte[] before = Files.readAllBytes(proxy);

        Proxy.make(film, proxy, "mark 1", TO_THE_END);

        assertThat(proxy).hasBinaryContent(before);
        assertThat(Proxy.mark(proxy)).contains("mark 1");
        assertThat(Proxy.mark(film)).isEmpty();
        assertThat(Proxy.mark(folder.resolve("none.mp4"))).isEmpty();
    }

    @Test
    void progress_is_told_and_goes_to_the_end() {
        List<Duration> told = new ArrayList<>();
        Path film = Film.EVEN.shoot(folder);

        Proxy.make(film, folder.resolve("proxy.mp4"), "", at -> told.add(at));

        assertThat(told).isSorted();
        assertThat(told.get(0)).isZero();
        assertThat(told.get(told.size() - 1)).isBetween(Duration.ofMillis(2390), Duration.ofMillis(2600));
    }

    @Test
    void whoever_stops_it_finds_the_folder_as_it_was() throws IOException {
        Path film = Film.EVEN.shoot(folder);
        Path out = Files.createDirectory(folder.resolve("out"));
        Path proxy = Files.writeString(out.resolve("proxy.mp4"), "older");

        boolean made = Proxy.make(film, proxy, "", at -> at.compareTo(Duration.ofSeconds(1)) < 0);

        assertThat(made).isFalse();
        assertThat(proxy).hasContent("older");
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files).containsExactly(proxy);
        }
    }

    @Test
    void what_is_no_film_is_refused_and_leaves_nothing_behind() throws IOException {
        Path film = Files.writeString(folder.resolve("film.mp4"), "200 g flour");
        Path out = Files.createDirectory(folder.resolve("out"));

        assertThatThrownBy(() -> Proxy.make(film, out.resolve("proxy.mp4"), "", TO_THE_END))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith(film + ": this is not a film that can be read");
        assertThat(out).isEmptyDirectory();
    }

    private BufferedImage still(Path film, long millis) throws IOException {
        Path png = folder.resolve("still.png");
        Still.at(film, Duration.ofMillis(millis), png);
        return ImageIO.read(png.toFile());
    }

    private record Shown(long micros, int number, boolean key) {}

    private static List<Shown> frames(Path film, int turn) throws FrameGrabber.Exception {
        List<Shown> frames = new ArrayList<>();
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(film.toFile());
                var converter = new org.bytedeco.javacv.Java2DFrameConverter()) {
            grabber.start();
            boolean upright = grabber.getDisplayRotation() == 0;
            long first = -1;
            for (Frame frame = grabber.grabImage(); frame != null; frame = grabber.grabImage()) {
                first = first < 0 ? frame.timestamp : first;
                int number = number(converter.convert(frame), upright ? turn : 0);
                frames.add(new Shown(frame.timestamp - first, number, frame.keyFrame));
            }
        }
        return frames;
    }

    /** The number that a picture shows that was turned clockwise by so much on its way to the screen. */
    private static int number(BufferedImage image, int turn) {
        int number = 0;
        for (int bar = 0; bar < 8; bar++) {
            int along = 2 * (turn == 90 || turn == 180 ? 7 - bar : bar) + 1;
            int x = turn % 180 == 0 ? along * image.getWidth() / 16 : image.getWidth() / 2;
            int y = turn % 180 == 0 ? image.getHeight() / 2 : along * image.getHeight() / 16;
            number = number << 1 | (image.getRGB(x, y) >> 8 & 0xff) >> 7;
        }
        return number;
    }

    /** What is heard. */
    private static final class Sound {

        /** In seconds, on the film's clock. */
        static double firstLoud(Path film) throws FrameGrabber.Exception {
            try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(film.toFile())) {
                grabber.start();
                for (Frame frame = grabber.grabSamples(); frame != null; frame = grabber.grabSamples()) {
                    var samples = (java.nio.ShortBuffer) frame.samples[0];
                    for (int i = 0; i < samples.limit(); i++) {
                        if (Math.abs(samples.get(i)) > 1500) {
                            return frame.timestamp / 1e6 + (double) i / grabber.getSampleRate();
                        }
                    }
                }
            }
            return -1;
        }
    }
}
