package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.Frame;
import org.bytedeco.javacv.FrameGrabber;
import org.bytedeco.javacv.Java2DFrameConverter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.notice.BadInput;

class ClipTest {

    private static final FrameRate PAL = new FrameRate(25, 1);

    @TempDir
    static Path films;

    @TempDir
    Path out;

    private Path film;
    private Path clip;

    @BeforeEach
    void shoot() {
        film = films.resolve("film.mp4");
        if (!Files.exists(film)) {
            TestFilm.even(film, 75, PAL);
        }
        clip = out.resolve("clip.mp4");
    }

    @Test
    void a_clip_holds_the_frames_from_the_first_moment_to_before_the_second() throws IOException {
        Clip.cut(film, Duration.ofMillis(1000), Duration.ofMillis(2000), clip);

        assertThat(numbers(clip)).isEqualTo(IntStream.range(25, 50).boxed().toList());
        assertThat(Footage.probe(clip).picture().orElseThrow().rate()).isEqualTo(PAL);
        assertThat(Footage.probe(clip).length()).isBetween(Duration.ofMillis(1000), Duration.ofMillis(1022));
    }

    @Test
    void a_clip_that_begins_within_a_frame_begins_with_it() throws IOException {
        Clip.cut(film, Duration.ofMillis(1010), Duration.ofMillis(1090), clip);

        assertThat(numbers(clip)).containsExactly(25, 26, 27);
        assertThat(frameTimes(clip)).containsExactly(0L, 30_000L, 70_000L);
    }

    @Test
    void sound_is_as_long_as_the_picture_and_in_time_with_it() throws IOException {
        Clip.cut(film, Duration.ofMillis(520), Duration.ofMillis(1480), clip);

        assertThat(soundMicros(clip)).isBetween(950_000L, 985_000L);
    }

    @Test
    void an_end_beyond_the_film_is_the_film_s() throws IOException {
        Clip.cut(film, Duration.ofMillis(2800), Duration.ofHours(1), clip);

        assertThat(numbers(clip)).containsExactly(70, 71, 72, 73, 74);
    }

    @Test
    void the_same_cut_gives_the_same_bytes_and_leaves_nothing_else_behind() throws IOException {
        Clip.cut(film, Duration.ofMillis(400), Duration.ofMillis(900), clip);
        byte[] before = Files.readAllBytes(clip);
        Clip.cut(film, Duration.ofMillis(400), Duration.ofMillis(900), clip);

        assertThat(clip).hasBinaryContent(before);
        assertThat(filesIn(out)).containsExactly("clip.mp4");
    }

    @Test
    void a_film_without_sound_gives_a_clip_without_sound() throws IOException {
        Path silent =
                TestFilm.write(out.resolve("silent.mp4"), 20, PAL, false, number -> 40_000L * number, recorder -> {});
        Clip.cut(silent, Duration.ZERO, Duration.ofMillis(200), clip);

        assertThat(numbers(clip)).containsExactly(0, 1, 2, 3, 4);
        assertThat(Footage.probe(clip).sound()).isEmpty();
    }

    @Test
    void a_clip_that_ends_before_it_begins_is_refused_and_an_older_one_stays() throws IOException {
        Files.writeString(clip, "older");
        assertThatThrownBy(() -> Clip.cut(film, Duration.ofSeconds(2), Duration.ofSeconds(1), clip))
                .isInstanceOf(BadInput.class)
                .hasMessage(film + ": a clip ends after it begins, not at 0:01.000 after 0:02.000; swap the two");
        assertThat(clip).hasContent("older");
    }

    @Test
    void a_place_that_cannot_be_written_is_a_sentence() throws IOException {
        Path file = Files.writeString(out.resolve("file"), "no folder");
        Path below = file.resolve("clip.mp4");

        assertThatThrownBy(() -> Clip.cut(film, Duration.ZERO, Duration.ofSeconds(1), below))
                .isInstanceOf(BadInput.class)
                .hasMessage(below + ": this file cannot be written; check the folder's permissions and space");
    }

    private static List<String> filesIn(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    private static List<Integer> numbers(Path film) throws FrameGrabber.Exception {
        List<Integer> numbers = new ArrayList<>();
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(film.toFile());
                Java2DFrameConverter converter = new Java2DFrameConverter()) {
            grabber.start();
            for (Frame frame = grabber.grabImage(); frame != null; frame = grabber.grabImage()) {
                numbers.add(TestFilm.numberIn(converter.convert(frame)));
            }
        }
        return numbers;
    }

    private static List<Long> frameTimes(Path film) throws FrameGrabber.Exception {
        List<Long> times = new ArrayList<>();
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(film.toFile())) {
            grabber.start();
            for (Frame frame = grabber.grabImage(); frame != null; frame = grabber.grabImage()) {
                times.add(frame.timestamp);
            }
        }
        return times;
    }

    private static long soundMicros(Path film) throws FrameGrabber.Exception {
        long samples = 0;
        try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(film.toFile())) {
            grabber.start();
            for (Frame frame = grabber.grabSamples(); frame != null; frame = grabber.grabSamples()) {
                samples += frame.samples[0].limit() / frame.audioChannels;
            }
            return samples * 1_000_000 / grabber.getSampleRate();
        }
    }
}
