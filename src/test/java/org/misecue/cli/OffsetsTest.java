package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.edit.Caption;
import org.misecue.edit.CaptionFile;
import org.misecue.episode.Corrections;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;
import org.misecue.narration.Shift;

/** Narrations in several files, each with a clock of its own. */
class OffsetsTest {

    @TempDir
    Path temp;

    private OnStage stage;

    @BeforeEach
    void buns() {
        stage = new OnStage(temp);
        stage.write("buns/recipe.md", "# Buns\n\n- 150 g plain flour\n- 2 eggs\n\n1. Whisk all.\n");
        stage.write("buns/narration/part-1.txt", "[0:02] now one hundred and fifty grams of flour\n");
        stage.write("buns/narration/part-2.txt", "[0:03] and two eggs\n[0:08] whisk all that\n");
    }

    private void offsets(String... rows) {
        stage.write(
                "buns/episode.yaml",
                "title: Buns\nnarration:\n  offsets:\n"
                        + List.of(rows).stream().map(row -> "    " + row + "\n").collect(Collectors.joining()));
    }

    @Test
    void every_moment_is_told_on_the_films_clock() {
        offsets("part-2.txt: 0:00:30");
        OnStage.Ran compared = stage.run("compare", "buns", "--json");
        assertThat(compared.out()).contains("\"at\" : 34.7", "narration/part-2.txt");
        assertThat(compared.err()).doesNotContain("narration/");
        assertThat(stage.run("find", "-e", "buns", "eggs").out()).contains("0:36");
        offsets("part-2.txt: 0:00:40");
        assertThat(stage.run("find", "-e", "buns", "eggs").out()).contains("0:46");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "part-2.txt: 0:00:01|note: narration/part-2.txt: from 0:04 on it is said over what narration/part-1.txt says, for 1 seconds|false",
                "part-2.txt: -0:00:01|note: narration/part-2.txt: from 0:02 on it is said over what narration/part-1.txt says, for 3 seconds in all|true",
                "part-2.txt: 0:05:00|note: narration/part-2.txt: nothing is said between the end of narration/part-1.txt at 0:05 and the begin of this at 5:03|true",
                "part-2.txt: 0:01:02|nothing is said|false",
                "part-2.txt: 0:01:03|nothing is said|true",
                "part-2.txt: -0:00:08|note: narration/part-2.txt: with its offset of -0:08 1 of its 2 cues end before the film begins|true"
            })
    void what_does_not_fit_together_is_told(String row, String note, boolean told) {
        offsets(row);
        String err = stage.run("compare", "buns").err();
        assertThat(err.contains(note)).as(err).isEqualTo(told);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "part-3.txt: 0:12:30|misecue: episode.yaml:4:5: narration: offsets: there is no “part-3.txt” in narration/; did you mean “part-1.txt”?",
                "part-2.txt: {film: take-1.mp4, begins: 0:12:30}|misecue: episode.yaml:4:5: narration: offsets: there is no “take-1.mp4” in footage/; put it there, or take this line out."
            })
    void a_file_that_is_not_there_is_told_with_its_line(String row, String message) {
        offsets(row);
        OnStage.Ran ran = stage.run("compare", "buns");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err().strip()).isEqualTo(message);
    }

    @Test
    void what_was_corrected_by_ear_stays_where_it_was_said() throws IOException {
        offsets("part-2.txt: 0:00:30");
        stage.run(
                "decide",
                "buns",
                "--by=Nell",
                "--when",
                "2026-05-04 10:00",
                "--heard",
                "part-2.txt 0:33 two eggs = ten eggs");
        assertThat(Files.readString(stage.path("buns/.misecue/corrections.yaml")))
                .contains("at: \"0:03\"");
        assertThat(stage.run("compare", "buns").out())
                .contains("At 0:33 in narration/part-2.txt Nell heard “ten eggs” where “two eggs” was written");
        offsets("part-2.txt: 0:01:30");
        OnStage.Ran moved = stage.run("compare", "buns");
        assertThat(moved.out()).contains("At 1:33 in narration/part-2.txt Nell heard “ten eggs”");
        assertThat(moved.err()).doesNotContain("no longer said");
        stage.run("decide", "buns", "--as-written", "1:33");
        assertThat(stage.run("compare", "buns").out()).doesNotContain("Nell");
    }

    @Test
    void a_narration_cut_in_two_comes_out_as_the_whole() throws IOException {
        stage.withSample();
        String whole = results();
        cut(Duration.ofMinutes(4));
        String parts = results();
        assertThat(parts).isEqualTo(whole);
    }

    @ParameterizedTest
    @CsvSource({"narration/part-1.txt", "narration/part-2.txt", "footage/take-1.mp4"})
    void the_film_that_is_published_may_be_called_by_any_of_its_narrations_or_itself(String film) throws IOException {
        stage.withSample();
        Files.createDirectories(stage.path("buns/footage"));
        Files.copy(stage.path("sample-project/footage/take-1.mp4"), stage.path("buns/footage/take-1.mp4"));
        Files.copy(stage.path("sample-project/footage/take-1.mp4"), stage.path("buns/footage/take-2.mp4"));
        stage.write(
                "buns/recipe.md",
                "# Buns\n\n- 150 g plain flour\n- 2 eggs\n\n1. Weigh the flour.\n2. Beat the eggs.\n");
        stage.write(
                "buns/narration/part-1.txt",
                "[0:20] weigh the flour the plain flour weigh it\n[0:40] that is the flour\n");
        stage.write("buns/narration/part-2.txt", "[0:20] beat the eggs so beat two eggs\n[0:50] beat the eggs\n");
        stage.write("buns/narration/take-2.txt", "[0:05] weigh the flour\n");
        stage.write(
                "buns/episode.yaml",
                "narration:\n  offsets:\n    part-1.txt: {film: take-1.mp4, begins: 0:00}\n"
                        + "    part-2.txt: {film: take-1.mp4, begins: 1:00}\npublish: {film: " + film + "}\n");
        assertThat(stage.run("describe", "buns").out()).contains("0:20 Weigh the flour", "1:20 Beat the eggs");
    }

    /** Verdicts, chapters, captions and markers, without the names of files. */
    private String results() throws IOException {
        stage.run("captions", "sample-project");
        stage.run("markers", "sample-project");
        StringBuilder all = new StringBuilder();
        all.append(stage.run("describe", "sample-project").out());
        all.append(stage.run("compare", "sample-project", "--json").out());
        all.append(Files.readString(stage.path("sample-project/out/markers.csv")));
        try (var captions = Files.list(stage.path("sample-project/out/captions"))) {
            for (Path file : captions.sorted().toList()) {
                all.append(Files.readString(file));
            }
        }
        try (var old = Files.walk(stage.path("sample-project/out/captions"))) {
            for (Path file : old.filter(Files::isRegularFile).toList()) {
                Files.delete(file);
            }
        }
        return all.toString()
                .replaceAll("narration/[a-z0-9-]+\\.vtt", "a narration")
                .replaceAll("\"quote\" : .*", "a quote, which ends with its file");
    }

    /** At the first pause after a time; both halves begin at 0:00. */
    private void cut(Duration after) throws IOException {
        Path file = stage.path("sample-project/narration/main.vtt");
        Narration narration = NarrationReader.read(file, "main");
        int at = 1;
        while (narration.cues().get(at).start().compareTo(after) < 0
                || narration
                        .cues()
                        .get(at - 1)
                        .end()
                        .equals(narration.cues().get(at).start())) {
            at++;
        }
        List<Cue> cues = narration.cues();
        Duration offset = cues.get(at).start();
        Files.delete(file);
        stage.write("sample-project/narration/part-1.vtt", vtt(cues.subList(0, at)));
        stage.write(
                "sample-project/narration/part-2.vtt",
                vtt(Shift.by(new Narration("n", cues.subList(at, cues.size()), List.of()), offset.negated())
                        .cues()));
        Path settings = stage.path("sample-project/episode.yaml");
        stage.write(
                "sample-project/episode.yaml",
                Files.readString(settings) + "narration: {offsets: {part-2.vtt: \"" + Corrections.exact(offset)
                        + "\"}}\n");
    }

    private static String vtt(List<Cue> cues) {
        return CaptionFile.webVtt(cues.stream()
                .map(cue -> new Caption(cue.start(), cue.end(), cue.speaker(), List.of(cue.text())))
                .toList());
    }
}
