package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The filming day of the sample episode, on time and late. */
class DayCommandTest {

    private static final String EPISODE = "sample-project";

    @TempDir
    Path temp;

    private OnStage stage;

    @BeforeEach
    void the_sample() throws IOException {
        stage = new OnStage(temp).withSample();
        settings("");
    }

    /** Adds to the sample's settings. */
    private void settings(String more) throws IOException {
        stage.write(EPISODE + "/episode.yaml", "takes: 1\nfirst-shot: 2026-05-04 10:00\n" + more);
    }

    private static JsonNode json(OnStage.Ran ran) throws IOException {
        assertThat(ran.exit()).as(ran.err()).isZero();
        return new ObjectMapper().readTree(ran.out());
    }

    private static List<Integer> firstRows(JsonNode day, int number) {
        List<Integer> rows = new ArrayList<>();
        day.at("/tasks").forEach(task -> rows.add(task.at("/id").asInt()));
        return rows.subList(0, number);
    }

    @Test
    void shows_the_call_sheet_and_keeps_it() {
        OnStage.Ran ran = stage.run("day", EPISODE);
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .contains("Call sheet for Monday 4 May 2026", "this order saves", "No shorter day exists")
                .contains("bakes at 180 °C");
        assertThat(stage.path(EPISODE + "/.misecue/day.json")).isNotEmptyFile();
    }

    @Test
    void makes_a_page_a_print_and_a_drawing() {
        OnStage.Ran ran = stage.run("day", EPISODE, "--html", "--pdf", "--svg");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEmpty();
        assertThat(stage.path(EPISODE + "/out/day.html")).content().contains("<svg", "Hour by hour");
        assertThat(stage.path(EPISODE + "/out/day.svg")).content().startsWith("<svg");
        assertThat(stage.path(EPISODE + "/out/day.pdf"))
                .content(java.nio.charset.StandardCharsets.ISO_8859_1)
                .startsWith("%PDF-");
    }

    @Test
    void a_late_day_is_planned_anew_and_says_what_slips() throws IOException {
        JsonNode first = json(stage.run("day", EPISODE, "--json"));
        String rows = String.join(
                ",", firstRows(first, 6).stream().map(String::valueOf).toList());
        JsonNode late = json(stage.run("day", EPISODE, "--json", "--now", "12:30", "--done", rows));
        assertThat(late.at("/slips")).isNotEmpty();
        assertThat(late.at("/promisedEnd")).isEqualTo(first.at("/end"));
        assertThat(late.at("/end").asText()).isGreaterThan(first.at("/end").asText());
        JsonNode later = json(stage.run("day", EPISODE, "--json", "--now", "12:30", "--done", rows));
        assertThat(later.at("/promisedEnd"))
                .as("slips are told against the first plan")
                .isEqualTo(first.at("/end"));
        assertThat(later.at("/end")).isEqualTo(late.at("/end"));
    }

    @Test
    void what_was_made_earlier_shortens_the_day() throws IOException {
        JsonNode plain = json(stage.run("day", EPISODE, "--json"));
        settings("made-earlier: [8]\n");
        JsonNode stoodIn = json(stage.run("day", EPISODE, "--json"));
        assertThat(stoodIn.at("/end").asText()).isLessThan(plain.at("/end").asText());
    }

    @Test
    void wishes_that_conflict_end_the_command_and_not_the_making_of_the_rest() throws IOException {
        settings("day: {end: 11:00}\n");
        String told = "episode.yaml: this wish cannot be met: the day ends by 11:00; change it or give it up.\n";
        assertThat(stage.run("day", EPISODE)).isEqualTo(new OnStage.Ran(ExitCode.BAD_INPUT, "", "misecue: " + told));
        OnStage.Ran made = stage.run("make", EPISODE);
        assertThat(made.exit()).isZero();
        assertThat(made.err()).contains("note: the filming day was not planned. " + told);
        assertThat(stage.path(EPISODE + "/out/prep.pdf")).isNotEmptyFile();
        assertThat(stage.path(EPISODE + "/out/day.pdf")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--now 25:00            | --now: expected a time of the day such as 11:20, not “25:00”.",
                "--now noon             | --now: expected a time of the day such as 11:20, not “noon”.",
                "--done 1               | --done: say also what time it is, such as --now 11:20.",
                "--now 11:00 --done 1-x | --done: expected row numbers such as 1-6,9, not “1-x”.",
                "--now 11:00 --done 6-1 | --done: a run goes upwards; write 1-6.",
                "--now 11:00 --done 999 | --done: the plan has no row 999; look the numbers up on the call sheet (misecue day).",
                "--psplib recipe.sm     | recipe.sm: the file cannot be read; name a .sm file of the library."
            })
    void what_cannot_be_used_is_told_in_one_sentence(String options, String sentence) {
        List<String> args = new ArrayList<>(List.of("day", EPISODE));
        args.addAll(List.of(options.split(" ")));
        assertThat(stage.run(args.toArray(String[]::new)))
                .isEqualTo(new OnStage.Ran(ExitCode.BAD_INPUT, "", "misecue: " + sentence + "\n"));
    }

    @ParameterizedTest
    @CsvSource({"{", "[]", "{\"last\": {\"x\": \"y\"}}", "{\"last\": {\"1\": \"y\"}}", "{\"ovens\": {\"1\": 9}}"})
    void a_kept_plan_that_is_damaged_is_told_and_stays(String kept) throws IOException {
        Path file = stage.write(EPISODE + "/.misecue/day.json", kept);
        OnStage.Ran ran = stage.run("day", EPISODE, "--now", "11:00");
        assertThat(ran.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.err())
                .isEqualTo("misecue: .misecue/day.json: the kept plan is damaged; delete the file and plan the day"
                        + " anew.\n");
        assertThat(Files.readString(file)).isEqualTo(kept);
    }

    @Test
    void a_published_problem_can_be_solved_instead() throws IOException {
        Path problem =
                Path.of("src/test/resources/org/misecue/day/three-cakes.sm").toAbsolutePath();
        JsonNode result = json(stage.run("day", "--psplib", problem.toString(), "--json"));
        assertThat(result.at("/makespan").asInt()).isEqualTo(16);
        assertThat(result.at("/proved").asBoolean()).isTrue();
    }
}
