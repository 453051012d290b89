package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What cannot be used is told in one sentence with place and remedy; the exit code is 2 and no file is touched. */
class BadInputTest {

    private static final String PUT =
            "put a recipe in it, such as recipe.md, or make an episode with “misecue new RECIPE”.";

    @TempDir
    Path temp;

    private OnStage stage() {
        return new OnStage(temp);
    }

    private void refused(String sentence, String... args) {
        OnStage stage = stage();
        var before = stage.contents();
        OnStage.Ran ran = stage.run(args);
        // The film was looked at first, and nobody here can read what it shows.
        String told = ran.err()
                .lines()
                .filter(line -> !line.startsWith("note: footage/take-1.mp4: text in the picture"))
                .collect(Collectors.joining("\n"));
        assertThat(ran.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.out()).isEmpty();
        assertThat(told).isEqualTo("misecue: " + sentence);
        assertThat(stage.contents()).isEqualTo(before);
    }

    @Test
    void an_empty_folder() throws IOException {
        Files.createDirectory(temp.resolve("episode"));
        refused("episode: the folder is empty; " + PUT, "make", "episode");
    }

    @Test
    void a_folder_that_is_not_there() {
        refused("episode: there is no such folder; check the name.", "compare", "episode");
        refused("plait.md: there is no such file or folder; check the name of the recipe.", "read", "plait.md");
        refused("plait.md: there is no such recipe file; check the name.", "new", "plait.md");
    }

    @Test
    void no_recipe() {
        stage().write("episode/narration/main.txt", "[0:01] hello");
        refused("episode: there is no recipe in this folder; " + PUT, "make", "episode");
    }

    @Test
    void two_recipes() {
        stage().withSample().write("sample-project/recipe.txt", "Toast");
        refused(
                "sample-project: an episode has one recipe, and here are recipe.md and recipe.txt; keep one.",
                "make",
                "sample-project");
    }

    @Test
    void a_recipe_without_ingredients() {
        stage().write("episode/recipe.md", "# Toast\n\nIt is good.\n");
        refused(
                "recipe.md: no ingredients were found; put them under a heading \"Ingredients\", one to a line, amount"
                        + " first.",
                "make",
                "episode");
    }

    @Test
    void a_narration_with_broken_times() {
        stage().withSample()
                .write(
                        "sample-project/narration/main.vtt",
                        "WEBVTT\n\n00:99:00.000 --> later\nhello\n\n99 --> 98\nx\n");
        refused(
                "narration/main.vtt:3: no cue with words can be read as WebVTT; expected one such as \"00:01:05.000 -->"
                        + " 00:01:09.500\" with its text in the next line, below a first line WEBVTT.",
                "make",
                "sample-project");
    }

    @Test
    void a_binary_file_named_md() throws IOException {
        byte[] noise = new byte[20_000];
        new Random(3).nextBytes(noise);
        Files.write(stage().write("episode/recipe.md", ""), noise);
        refused(
                "recipe.md: this is no text but a file of an unknown kind; give the recipe as text, Markdown, Word, ODF,"
                        + " RTF, HTML or PDF.",
                "make",
                "episode");
    }

    @Test
    void a_film_that_breaks_off() throws IOException {
        stage().withSample();
        Path film = temp.resolve("sample-project/footage/take-1.mp4");
        Files.write(film, Arrays.copyOf(Files.readAllBytes(film), 200_000));
        refused(
                "sample-project/footage/take-1.mp4: the film breaks off before its end; copy it again from the camera.",
                "make",
                "sample-project");
    }

    @Test
    void a_text_of_fifty_megabytes() throws IOException {
        Path recipe = stage().write("episode/recipe.txt", "Toast\n\n100 g flour\n");
        try (RandomAccessFile file = new RandomAccessFile(recipe.toFile(), "rw")) {
            file.setLength(50 * 1024 * 1024);
        }
        OnStage.Ran ran = stage().run("make", "episode");
        assertThat(ran.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.err())
                .isEqualTo("misecue: recipe.txt: 50 MB is too much for a recipe, of which 20 MB are read; keep only the"
                        + " recipe in this file.\n");
        assertThat(temp.resolve("episode/out")).doesNotExist();
    }

    @Test
    void an_unknown_setting() {
        stage().withSample().write("sample-project/episode.yaml", "title: Cake\ntakess: 2\n");
        String sentence = "episode.yaml:2:1: “takess” is not a setting; did you mean “takes”?";
        refused(sentence, "make", "sample-project");
        refused(sentence, "prep", "sample-project");
        refused(sentence, "find", "butter", "-e", "sample-project");
    }

    @Test
    void an_out_that_cannot_be_written() {
        stage().withSample().write("sample-project/out", "mine");
        refused("out: a file stands where results go; move it away or give it another name.", "make", "sample-project");
    }

    @Test
    void a_result_that_would_take_the_place_of_an_input() {
        stage().withSample();
        for (String input : new String[] {"recipe.md", "episode.yaml", "narration/main.vtt", "footage/take-1.mp4"}) {
            String name = "sample-project/" + input;
            refused(
                    name + ": this is a file that the episode is made of; name another with --out.",
                    "compare",
                    "sample-project",
                    "--out",
                    name);
        }
        refused(
                "nowhere/prep.txt: this cannot be written (no such folder); free the place or choose another.",
                "prep",
                "sample-project",
                "--quiet",
                "--out",
                "nowhere/prep.txt");
    }

    @Test
    void nothing_to_compare_with() throws IOException {
        stage().withSample();
        Files.delete(temp.resolve("sample-project/narration/main.vtt"));
        refused(
                "sample-project/narration: there is no narration to compare with; put a .vtt, .srt, .ttml, .xml, .json or .txt file"
                        + " there.",
                "compare",
                "sample-project");
    }
}
