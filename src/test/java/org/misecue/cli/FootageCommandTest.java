package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.footage.CameraFile;
import org.misecue.footage.Take;

class FootageCommandTest {

    private static final String RECIPE = """
            # Oat slice

            - 200 g oats
            - 100 g butter

            1. Melt the butter.
            2. Stir the oats into the melted butter.
            """;

    @TempDir
    Path folder;

    private OnStage stage;
    private Path footage;

    @BeforeEach
    void set_up() throws IOException {
        stage = new OnStage(folder);
        stage.write("ep/recipe.md", RECIPE);
        footage = Files.createDirectories(folder.resolve("ep/footage"));
    }

    private void shoot(CameraFile kind, String name) throws IOException {
        Files.move(kind.shoot(folder), footage.resolve(name));
    }

    private List<String> made() throws IOException {
        Path out = folder.resolve("ep/out");
        try (Stream<Path> files = Files.exists(out) ? Files.walk(out) : Stream.empty()) {
            return files.filter(Files::isRegularFile)
                    .map(file -> out.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void each_film_is_told_and_nothing_is_made() throws IOException {
        shoot(CameraFile.H264_AAC_MP4, "a.mp4");
        shoot(CameraFile.SOUND_ONLY_MP4, "b.mp4");

        OnStage.Ran ran = stage.run("footage", "ep", "--target", "-14");

        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains(
                        "footage/a.mp4\n", "160 × 96, h264, 25 frames a second", "  time code  none", "LUFS, true peak")
                .contains("LU below the target of −14 LUFS", "footage/b.mp4\n", "  picture    none\n");
        assertThat(made()).isEmpty();
    }

    @Test
    void sheets_show_the_steps_that_are_on_and_the_whole_film() throws IOException {
        shoot(CameraFile.H264_AAC_MP4, "main.mp4");
        shoot(CameraFile.H264_AAC_MOV, "main.mov");
        shoot(CameraFile.SOUND_ONLY_MP4, "sound.mp4");
        stage.write("ep/narration/main.vtt", """
                WEBVTT

                00:00.000 --> 00:01.500
                We melt the butter, a hundred grams.

                00:01.500 --> 00:03.000
                And stir in the oats, two hundred grams, into the melted butter.
                """);

        OnStage.Ran ran = stage.run("footage", "ep", "--sheets", "--json");

        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(made()).contains("sheets/main.mp4/film.png", "sheets/main.mov/film.png");
        assertThat(made()).anyMatch(name -> name.matches("sheets/main.m../step-0[12].png"));
        assertThat(made()).noneMatch(name -> name.contains("sound") || name.contains("part"));
        assertThat(ran.err().lines()).allMatch(line -> line.startsWith("made ")).hasSize(made().size());
        assertThat(ran.out()).startsWith("{").endsWith("}\n");
    }

    @Test
    void a_film_that_cannot_be_read_is_named_and_the_others_are_told() throws IOException {
        shoot(CameraFile.H264_AAC_MP4, "c.mp4");
        byte[] whole = Files.readAllBytes(footage.resolve("c.mp4"));
        Files.write(footage.resolve("a.mp4"), Arrays.copyOf(whole, whole.length - 900));
        Files.write(footage.resolve("b.mov"), new byte[0]);
        Files.writeString(footage.resolve("d.mkv"), "200 g oats");

        OnStage.Ran ran = stage.run("footage", "ep", "--sheets");

        assertThat(ran.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.out()).startsWith("footage/c.mp4\n").doesNotContain("a.mp4", "b.mov", "d.mkv");
        assertThat(ran.err().lines().filter(line -> line.startsWith("misecue: ")))
                .hasSize(3)
                .allMatch(line -> line.contains("copy it again from the camera"));
    }

    @Test
    void what_is_missing_or_impossible_is_said() throws IOException {
        assertThat(stage.run("footage", "ep").err())
                .contains("footage: there is no film to look at; put the camera's files there.");
        shoot(CameraFile.SOUND_ONLY_MP4, "a.mp4");
        assertThat(stage.run("footage", "ep", "--target", "14").err())
                .contains("--target: loudness is between -70 and 0 LUFS, not 14; say for example -14.");
        assertThat(stage.run("footage", "ep", "--target", "loud").exit()).isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void films_of_one_take_are_told_by_time_code_or_by_their_sound() throws IOException {
        Take take = new Take(4, 40);
        take.film(footage.resolve("close-up.mp4"), 7.48, 500);
        take.film(footage.resolve("main.mov"), 2, 500, "10:20:00:00");
        take.film(footage.resolve("side.mov"), 3.24, 500, "10:20:01:06");
        new Take(5, 30).film(footage.resolve("tasting.mp4"), 0, 500);

        OnStage.Ran ran = stage.run("footage", "ep");

        assertThat(ran.exit()).as(ran.err()).isZero();
        assertThat(ran.out())
                .contains("  together   began 5.480 s after footage/main.mov, by its sound, alike at ")
                .contains("             began 4.240 s after footage/side.mov, by its sound, alike at ")
                .contains("  together   began 5.480 s before footage/close-up.mp4, by its sound, alike at ")
                .contains("             began 1.240 s before footage/side.mov, by time code, and its sound agrees at ")
                .contains("  together   not known with footage/close-up.mp4, footage/main.mov, footage/side.mov:"
                        + " neither time code nor sound tells\n")
                .doesNotContain("runs apart");
        assertThat(folder.resolve("ep/.misecue/together.json")).exists();

        OnStage.Ran json = stage.run("footage", "ep", "--json");

        JsonNode film = new ObjectMapper().readTree(json.out()).at("/films/0");
        assertThat(film.at("/together/0/film").asText()).isEqualTo("footage/main.mov");
        assertThat(film.at("/together/0/began").asDouble()).isEqualTo(5.48, within(0.001));
        assertThat(film.at("/together/0/by").asText()).isEqualTo("sound");
        assertThat(film.at("/notKnown").toString()).isEqualTo("[\"footage/tasting.mp4\"]");
        assertThat(stage.run("footage", "ep").out()).isEqualTo(ran.out());
    }
}
