package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.footage.Take;

/** Two cameras that call their films alike, and a narration of each. */
class TwinNamesTest {

    @TempDir
    static Path folder;

    private static OnStage stage;

    @BeforeAll
    static void film() throws IOException {
        stage = new OnStage(folder);
        stage.write("ep/recipe.md", "# Oat slice\n\n- 200 g oats\n\n1. Stir the oats.\n");
        stage.write("ep/episode.yaml", """
                narration:
                  offsets:
                    A001.srt: {film: A001.mov, begins: "0:00:00"}
                    A001.vtt: {film: A001.mp4, begins: "0:00:00"}
                """);
        stage.write("ep/narration/A001.vtt", "WEBVTT\n\n00:02.000 --> 00:04.000\nStir the oats.\n");
        stage.write("ep/narration/A001.srt", "1\n00:00:02,000 --> 00:00:05,000\nTwo hundred grams of oats.\n");
        Path footage = Files.createDirectories(folder.resolve("ep/footage"));
        Files.createDirectories(footage.resolve("day2"));
        new Take(4, 20).film(footage.resolve("A001.mov"), 0, 150);
        new Take(5, 20).film(footage.resolve("A001.mp4"), 0, 200);
    }

    private static List<String> names(String out) throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("ep/out/" + out))) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static OnStage.Ran run(String... args) {
        OnStage.Ran ran = stage.run(args);
        assertThat(ran.exit()).as(ran.err()).isZero();
        return ran;
    }

    @Test
    void lists_of_markers_lie_beside_each_other() throws IOException {
        run("markers", "ep");
        assertThat(names("markers")).containsExactly("A001.mov.edl", "A001.mp4.edl");
        assertThat(Files.readString(folder.resolve("ep/out/markers/A001.mov.edl")))
                .contains("NAME: A001.mov");
    }

    @Test
    void captions_lie_beside_each_other() throws IOException {
        run("captions", "ep");
        assertThat(names("captions")).containsExactly("A001.srt.srt", "A001.srt.vtt", "A001.vtt.srt", "A001.vtt.vtt");
        assertThat(Files.readString(folder.resolve("ep/out/captions/A001.vtt.srt")))
                .contains("Stir the oats");
        assertThat(Files.readString(folder.resolve("ep/out/captions/A001.srt.srt")))
                .contains("Two hundred");
    }

    @Test
    void stills_clips_and_sheets_lie_beside_each_other() throws IOException {
        run("find", "-e", "ep", "oats", "--still", "--clip");
        for (String kind : List.of("stills", "clips")) {
            assertThat(names(kind))
                    .anyMatch(name -> name.startsWith("A001.mov-"))
                    .anyMatch(name -> name.startsWith("A001.mp4-"))
                    .noneMatch(name -> name.startsWith("A001-"));
        }
        run("footage", "ep", "--sheets");
        assertThat(names("sheets")).containsExactly("A001.mov", "A001.mp4");
    }

    @Test
    void a_narration_of_two_films_names_says_which_is_taken() throws IOException {
        for (String file : List.of("recipe.md", "narration/A001.vtt")) {
            stage.write("one/" + file, Files.readString(folder.resolve("ep/" + file)));
        }
        Path footage = Files.createDirectories(folder.resolve("one/footage"));
        for (String film : List.of("A001.mov", "A001.mp4")) {
            Files.copy(folder.resolve("ep/footage/" + film), footage.resolve(film));
        }
        assertThat(run("captions", "one").err())
                .contains("note: narration/A001.vtt: footage/A001.mov and footage/A001.mp4 have its name,"
                        + " and it is taken for that of footage/A001.mov; name the right one as film in episode.yaml"
                        + " under narration: offsets.\n");
        assertThat(run("captions", "ep").err()).doesNotContain("have its name");
    }

    @Test
    void a_folder_among_the_films_is_told() {
        assertThat(run("captions", "ep").err())
                .contains("note: footage/day2: folders in footage/ are not looked into;"
                        + " move what is in this one up into footage/.\n");
    }
}
