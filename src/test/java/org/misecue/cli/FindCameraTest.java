package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.footage.CameraFile;
import org.misecue.footage.Take;

class FindCameraTest {

    @TempDir
    static Path folder;

    private static OnStage stage;

    @BeforeAll
    static void film() throws IOException {
        stage = new OnStage(folder);
        stage.write("ep/recipe.md", """
                # Oat slice

                - 200 g oats
                - 100 g butter

                1. Melt the butter.
                2. Stir the oats into the melted butter.
                """);
        stage.write("ep/narration/main.vtt", """
                WEBVTT

                00:01.000 --> 00:02.000
                We melt the butter, ninety grams.

                00:08.000 --> 00:11.000
                And stir in the oats, three hundred grams.
                """);
        stage.write("ep/narration/tasting.vtt", """
                WEBVTT

                00:01.000 --> 00:02.000
                Crumbly, that slice.
                """);
        Path footage = Files.createDirectories(folder.resolve("ep/footage"));
        Take take = new Take(4, 40);
        take.film(footage.resolve("main.mp4"), 2, 500);
        take.film(footage.resolve("close-up.mp4"), 7.48, 450);
        new Take(5, 30).film(footage.resolve("tasting.mp4"), 0, 400);
    }

    @Test
    void films_of_two_days_at_one_hour_are_not_laid_together() throws IOException {
        for (String file : List.of("recipe.md", "narration/main.vtt")) {
            stage.write("days/" + file, Files.readString(folder.resolve("ep/" + file)));
        }
        Path footage = Files.createDirectories(folder.resolve("days/footage"));
        new Take(4, 40).film(footage.resolve("main.mp4"), 2, 500, "10:00:00:00");
        new Take(8, 40).film(footage.resolve("monday.mp4"), 2, 500, "10:00:04:00");
        Take.silent(40).film(footage.resolve("top.mp4"), 2, 500, "10:00:04:00");

        OnStage.Ran monday = stage.run("find", "-e", "days", "stir in the oats", "--camera", "monday");
        assertThat(monday.out()).doesNotContain("monday");
        assertThat(monday.err())
                .contains("note: footage/monday.mp4: by time code this ran beside footage/main.mp4,"
                        + " but the two sound different, so they are not laid together.\n");
        OnStage.Ran top = stage.run("find", "-e", "days", "stir in the oats", "--camera", "top");
        assertThat(top.out()).contains("footage/top.mp4 at 0:0");
        assertThat(top.err())
                .contains("note: footage/top.mp4: this is laid beside footage/main.mp4 by time code alone:"
                        + " their sound cannot tell.\n");
        assertThat(stage.run("footage", "days").out())
                .contains("not laid together with footage/main.mp4: by time code it began 4.000 s after it,"
                        + " but the two sound different");
        JsonNode films = new ObjectMapper()
                .readTree(stage.run("footage", "days", "--json").out())
                .at("/films");
        assertThat(films.at("/0/contradicted").toString())
                .isEqualTo("[{\"film\":\"footage/monday.mp4\",\"byTimecode\":-4.0}]");
        assertThat(films.at("/0/together/0/sound").asText()).isEqualTo("cannotTell");
    }

    @Test
    void a_moment_is_told_on_the_clock_of_another_camera() throws IOException {
        OnStage.Ran ran = stage.run(
                "find", "-e", "ep", "stir in the oats", "--camera", "close-up", "--json", "--still", "--clip");

        assertThat(ran.exit()).as(ran.err()).isZero();
        JsonNode hit = new ObjectMapper().readTree(ran.out()).at("/hits/0");
        double at = hit.at("/at").asDouble();
        assertThat(hit.at("/source").asText()).isEqualTo("narration/main.vtt");
        assertThat(hit.at("/camera/film").asText()).isEqualTo("footage/close-up.mp4");
        assertThat(hit.at("/camera/at").asDouble()).isEqualTo(at - 5.48, within(0.002));
        Path still = folder.resolve("ep/out/stills/close-up-0.0" + (int) (at - 5.48) + ".png");
        assertThat(CameraFile.numberIn(still)).isEqualTo((int) ((at - 5.48) * 25));
        assertThat(folder.resolve("ep/out/clips")).isDirectoryContaining("glob:**/close-up-*.mp4");
    }

    @Test
    void people_read_it_beside_where_it_was_said() {
        OnStage.Ran ran = stage.run("find", "-e", "ep", "stir in the oats", "--camera", "Close");
        assertThat(ran.out()).contains("narration/main.vtt · footage/close-up.mp4 at 0:0");
        assertThat(ran.err()).isEmpty();
        assertThat(stage.run("find", "-e", "ep", "oats").out()).doesNotContain("close-up");
        assertThat(stage.run("find", "-e", "ep", "oats", "--camera", "footage/main.mp4")
                        .out())
                .contains(" · footage/main.mp4 at ");
    }

    @Test
    void what_the_camera_did_not_see_is_said_and_found_all_the_same() {
        OnStage.Ran before = stage.run("find", "-e", "ep", "ninety grams", "--camera", "close-up", "--still");
        assertThat(before.exit()).isZero();
        assertThat(before.out()).contains("ninety").doesNotContain("close-up");
        assertThat(before.err())
                .contains("note: footage/close-up.mp4: this did not run at 0:01 of footage/main.mp4.\n");
        OnStage.Ran elsewhere = stage.run("find", "-e", "ep", "crumbly", "--camera", "close-up");
        assertThat(elsewhere.out()).contains("rumbly");
        assertThat(elsewhere.err())
                .contains("note: footage/close-up.mp4: it is not known when this ran beside footage/tasting.mp4:"
                        + " neither time code nor sound tells.\n");
    }

    /** The close-up began 5.48 s after the film in which the first step is told. */
    @Test
    void markers_stand_in_the_films_that_ran_meanwhile_as_far_as_they_ran() throws IOException {
        OnStage.Ran ran = stage.run("markers", "ep");
        assertThat(ran.exit()).as(ran.err()).isZero();
        List<String> rows = Files.readAllLines(folder.resolve("ep/out/markers.csv"));
        List<String> main =
                rows.stream().filter(row -> row.startsWith("footage/main.mp4")).toList();
        List<String> close = rows.stream()
                .filter(row -> row.startsWith("footage/close-up.mp4"))
                .toList();
        List<String> later = main.stream().filter(row -> seconds(row) > 5.48).toList();
        assertThat(main).hasSizeGreaterThan(later.size());
        assertThat(close).isNotEmpty().hasSameSizeAs(later).allMatch(row -> row.contains("(told in footage/main.mp4)"));
        for (int i = 0; i < close.size(); i++) {
            assertThat(seconds(close.get(i))).isEqualTo(seconds(later.get(i)) - 5.48, within(0.002));
        }
        assertThat(rows).noneMatch(row -> row.startsWith("footage/tasting.mp4") && row.contains("told in"));
        assertThat(Files.readString(folder.resolve("ep/out/markers/close-up.edl")))
                .contains("* LOC: 00:00:04:09 RED     DIFFERS oats");
    }

    private static double seconds(String row) {
        return Double.parseDouble(row.split(",")[2].replace("\"", ""));
    }

    @Test
    void a_camera_that_is_not_there_is_named_with_those_that_are() {
        OnStage.Ran ran = stage.run("find", "-e", "ep", "oats", "--camera", "overhead");
        assertThat(ran.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.err())
                .contains("--camera: no film in footage/ has the name overhead or begins with it; there are"
                        + " footage/close-up.mp4, footage/main.mp4, footage/tasting.mp4.");
        assertThat(stage.run("find", "--in", ".", "oats", "--camera", "main").exit())
                .isEqualTo(ExitCode.BAD_INPUT);
    }
}
