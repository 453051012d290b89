package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.footage.SubtitledFilm;
import org.misecue.footage.SubtitledFilm.Kind;
import org.misecue.footage.SubtitledFilm.Line;
import org.misecue.footage.SubtitledFilm.Lines;

/** What is said in films that have no narration file. */
class SubtitlesInsideTest {

    private static final String NOTE =
            "note: footage/take-1.mp4: what was said is taken from the subtitles inside it, track 2, English";

    @TempDir
    Path temp;

    private OnStage stage;

    @BeforeEach
    void buns() throws IOException {
        stage = new OnStage(temp);
        stage.write("buns/recipe.md", "# Buns\n\n- 150 g plain flour\n- 2 eggs\n\n1. Whisk the eggs with the flour.\n");
        film(Kind.MOV_TEXT, "take-1.mp4");
    }

    private void film(Kind kind, String name) throws IOException {
        Files.createDirectories(stage.path("buns/footage"));
        SubtitledFilm.write(
                stage.path("buns/footage").resolve(name),
                12,
                new Lines(
                        kind,
                        "eng",
                        List.of(
                                new Line(1000, 3000, "whisk one hundred and fifty grams of flour"),
                                new Line(5000, 2000, "with <i>three</i> eggs"))));
    }

    @Test
    void are_compared_found_captioned_and_marked_on_the_films_clock() throws IOException {
        OnStage.Ran compared = stage.run("compare", "buns", "--json");
        assertThat(compared.exit()).isEqualTo(1);
        assertThat(compared.err()).contains(NOTE);
        assertThat(compared.out()).contains("\"source\" : \"footage/take-1.mp4\"", "with three eggs");
        assertThat(stage.run("index", "buns").err()).contains(NOTE);
        assertThat(stage.run("find", "-e", "buns", "eggs").out()).contains("0:06", "footage/take-1.mp4");
        stage.run("captions", "buns");
        assertThat(Files.readString(stage.path("buns/out/captions/take-1.srt"))).contains("00:00:05,000 --> ");
        stage.run("markers", "buns");
        assertThat(Files.readString(stage.path("buns/out/markers.csv"))).contains("differs,eggs");
    }

    @Test
    void are_kept_until_the_film_is_another() throws IOException {
        stage.run("compare", "buns");
        Path kept = stage.path("buns/.misecue/said/take-1.mp4.json");
        Files.writeString(kept, Files.readString(kept).replace("three", "two"));
        assertThat(stage.run("compare", "buns").exit()).isZero();
        film(Kind.MOV_TEXT, "take-1.mp4");
        Files.write(
                stage.path("buns/footage/take-1.mp4"),
                new byte[] {0, 0, 0, 8, 'f', 'r', 'e', 'e'},
                java.nio.file.StandardOpenOption.APPEND);
        assertThat(stage.run("compare", "buns").exit()).isEqualTo(1);
    }

    @Test
    void give_way_to_a_narration_file_of_the_film() {
        stage.write("buns/narration/take-1.txt", "[0:01] whisk one hundred and fifty grams of flour with two eggs\n");
        OnStage.Ran compared = stage.run("compare", "buns");
        assertThat(compared.exit()).isZero();
        assertThat(compared.err()).doesNotContain("subtitles");
    }

    @Test
    void can_be_corrected_by_ear() {
        stage.run(
                "decide", "buns", "--by=Nell", "--when", "2026-05-04 10:00", "--heard", "take-1.mp4 0:05 three = two");
        assertThat(stage.run("compare", "buns").out()).contains("in footage/take-1.mp4 Nell heard “two”");
    }

    @Test
    void are_told_where_they_are_pictures_of_text() throws IOException {
        Files.delete(stage.path("buns/footage/take-1.mp4"));
        film(Kind.PICTURES, "take-2.mkv");
        OnStage.Ran compared = stage.run("compare", "buns");
        assertThat(compared.exit()).isEqualTo(2);
        assertThat(compared.err())
                .contains(
                        "there is no narration to compare with",
                        "(footage/take-2.mkv: the subtitles inside it, track 2, are pictures or in a form that is not known"
                                + " (hdmv_pgs_subtitle), and were not read;");
    }

    @Test
    void are_found_in_an_archive() {
        assertThat(stage.run("find", "--in", ".", "eggs").out()).contains("buns", "footage/take-1.mp4");
    }
}
