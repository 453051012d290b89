package org.misecue.footage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.bytedeco.ffmpeg.global.avcodec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.misecue.footage.SubtitledFilm.Kind;
import org.misecue.footage.SubtitledFilm.Line;
import org.misecue.footage.SubtitledFilm.Lines;
import org.misecue.notice.BadInput;

/** The films, and what is expected of their packets, come from FFmpeg's own writers and decoders. */
class SubtitlesTest {

    private static final List<Line> SAID = List.of(
            new Line(500, 1500, "weigh the flour"),
            new Line(2500, 1000, "fold – gently"),
            new Line(7000, 2000, "bake"));

    @TempDir
    Path folder;

    private Path film(Kind kind, Lines... tracks) throws IOException {
        return SubtitledFilm.write(folder.resolve("film." + kind.ending), 10, tracks);
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "PICTURES")
    void each_text_is_read_with_its_times(Kind kind) throws IOException {
        FilmSubtitles read = FilmSubtitles.of(film(kind, new Lines(kind, "eng", SAID)), Locale.UK);
        assertThat(read.read()).map(SubtitleTrack::language).hasValue("eng");
        assertThat(read.texts())
                .extracting(one -> one.from().toMillis() + "-"
                        + one.to().map(Duration::toMillis).orElse(-1L) + " " + one.text())
                .containsExactly("500-2000 weigh the flour", "2500-3500 fold – gently", "7000-9000 bake");
    }

    @ParameterizedTest
    @CsvSource({"fre eng, eng", "eng fre, eng", "fre ger, fre", "fre en-GB, en-GB", "'' eng, eng", "fre '', fre"})
    void the_track_in_the_language_is_read_or_else_the_first(String languages, String read) throws IOException {
        String[] both = languages.replace("''", "none").split(" ");
        Path film = film(
                Kind.SUBRIP,
                new Lines(Kind.SUBRIP, both[0].replace("none", ""), SAID),
                new Lines(Kind.SUBRIP, both[1].replace("none", ""), SAID));
        assertThat(FilmSubtitles.of(film, Locale.UK).read())
                .map(SubtitleTrack::language)
                .hasValue(read);
    }

    @Test
    void pictures_of_text_are_told_and_passed_over() throws IOException {
        FilmSubtitles pictures =
                FilmSubtitles.of(film(Kind.PICTURES, new Lines(Kind.PICTURES, "eng", SAID)), Locale.UK);
        assertThat(pictures.read()).isEmpty();
        assertThat(pictures.tracks()).extracting(SubtitleTrack::isText).containsExactly(false);
        FilmSubtitles both = FilmSubtitles.of(
                film(Kind.SUBRIP, new Lines(Kind.PICTURES, "eng", SAID), new Lines(Kind.SUBRIP, "fre", SAID)),
                Locale.UK);
        assertThat(both.read()).map(SubtitleTrack::codec).hasValue("subrip");
    }

    @Test
    void a_film_without_any_has_none() {
        Path film = CameraFile.H264_AAC_MP4.shoot(folder);
        assertThat(FilmSubtitles.of(film, Locale.UK))
                .isEqualTo(new FilmSubtitles(List.of(), Optional.empty(), List.of()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "SUBRIP|weigh the flour",
                "MOV_TEXT|weigh the flour",
                "MOV_TEXT|½ tsp – crème fraîche",
                "ASS|weigh the flour",
                "ASS|weigh, sift, and fold",
                "ASS|{\\i1}weigh{\\i0}\\Nthe\\hflour",
                "ASS|two\\nlines"
            })
    void a_packets_text_is_what_the_reference_decoder_reads(Kind kind, String text) {
        byte[] payload = kind.payload(3, text);
        assertThat(SubtitlePayload.of(kind.codec).text(payload).replaceAll("\\s+", " "))
                .isEqualTo(SubtitledFilm.decoded(kind, payload));
    }

    @Test
    void timed_text_may_be_wide_and_may_tell_a_wrong_length() {
        byte[] wide = "\uFEFFrösti".getBytes(StandardCharsets.UTF_16BE);
        SubtitlePayload payload = SubtitlePayload.of(avcodec.AV_CODEC_ID_MOV_TEXT);
        assertThat(payload.text(SubtitledFilm.withLength(wide))).isEqualTo("rösti");
        assertThat(payload.text(new byte[] {0x7f, 0x7f, 'o', 'k'})).isEqualTo("ok");
        assertThat(payload.text(new byte[] {0, 2, 'o', 'k', 0, 0, 0, 12})).isEqualTo("ok");
        assertThat(payload.text(new byte[] {0})).isEmpty();
    }

    @Test
    void what_was_read_is_kept_as_it_is() throws IOException {
        FilmSubtitles read = FilmSubtitles.of(
                film(Kind.SUBRIP, new Lines(Kind.PICTURES, "", SAID), new Lines(Kind.SUBRIP, "eng", SAID)), Locale.UK);
        assertThat(SubtitlesJson.read(SubtitlesJson.write(read, "mark"), "mark"))
                .hasValue(read);
        assertThat(SubtitlesJson.read(SubtitlesJson.write(read, "mark"), "another"))
                .isEmpty();
        assertThat(SubtitlesJson.read("[", "mark")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = {"MOV_TEXT", "SUBRIP", "ASS"})
    void a_damaged_film_is_read_or_refused_in_a_sentence(Kind kind) throws IOException {
        byte[] whole = Files.readAllBytes(film(kind, new Lines(kind, "eng", SAID)));
        Random random = new Random(7);
        Path film = folder.resolve("damaged." + kind.ending);
        for (int i = 0; i < 60; i++) {
            byte[] bytes = i % 3 == 0 ? java.util.Arrays.copyOf(whole, random.nextInt(whole.length)) : whole.clone();
            for (int hits = 0; hits < 20 && bytes.length > 0; hits++) {
                bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            }
            Files.write(film, bytes);
            try {
                FilmSubtitles read = FilmSubtitles.of(film, Locale.UK);
                assertThat(SubtitlesJson.read(SubtitlesJson.write(read, ""), ""))
                        .hasValue(read);
            } catch (BadInput e) {
                assertThat(e.getMessage()).startsWith(film + ": ").doesNotContain("\n");
            }
        }
    }

    @Test
    void a_film_that_is_none_is_refused() {
        assertThatExceptionOfType(BadInput.class)
                .isThrownBy(() -> FilmSubtitles.of(folder.resolve("none.mp4"), Locale.UK));
    }
}
