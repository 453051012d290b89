package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.narration.Clock;

class LogCommandTest {

    private static final Path TRUTH = Path.of("src/test/resources/org/misecue/edit/sample-shots.csv");
    private static final String RECIPE = """
            # Oat biscuits

            - 100 g butter
            - 150 g rolled oats

            1. Melt the butter.
            2. Stir in the oats.
            3. Bake for 20 minutes.
            """;

    @TempDir
    Path folder;

    private OnStage stage;

    @BeforeEach
    void set() {
        stage = new OnStage(folder);
    }

    private JsonNode log(String episode) throws IOException {
        OnStage.Ran ran = stage.run("log", episode, "--json");
        assertThat(ran.exit()).as(ran.err()).isZero();
        return new JsonMapper().readTree(ran.out());
    }

    private static Map<Integer, String> standings(JsonNode log) {
        Map<Integer, String> standings = new TreeMap<>();
        log.get("shots")
                .forEach(shot -> standings.put(
                        shot.get("number").asInt(), shot.get("standing").asText()));
        return standings;
    }

    private void film(String name) throws IOException {
        Path file = stage.path("biscuits/footage/" + name);
        Files.createDirectories(file.getParent());
        Files.copy(Path.of("sample-project/footage/take-1.mp4"), file);
    }

    /** Held against stretches that were marked by hand; of what is said over a shot most is found, and nothing elsewhere. */
    @Test
    void the_samples_shots_are_where_they_are_spoken_of() throws IOException {
        Map<Integer, double[]> truth = new TreeMap<>();
        for (String line : Files.readAllLines(TRUTH)) {
            if (!line.startsWith("#")) {
                String[] cells = line.split(",", -1);
                truth.put(Integer.valueOf(cells[0]), new double[] {seconds(cells[1]), seconds(cells[2])});
            }
        }
        stage.withSample();
        int found = 0;
        for (JsonNode shot : log("sample-project").get("shots")) {
            if (shot.get("standing").asText().equals("spoken")) {
                int number = shot.get("number").asInt();
                assertThat(truth).containsKey(number);
                JsonNode place = shot.get("places").get(0);
                assertThat(place.get("from").asDouble())
                        .as("shot " + number)
                        .isBetween(truth.get(number)[0], truth.get(number)[1]);
                assertThat(place.get("to").asDouble())
                        .as("shot " + number)
                        .isBetween(truth.get(number)[0], truth.get(number)[1]);
                found++;
            }
        }
        assertThat(found).isGreaterThanOrEqualTo(18);
    }

    private static double seconds(String clock) {
        return Clock.parse(clock).orElseThrow().toMillis() / 1000.0;
    }

    @Test
    void slates_tell_what_is_there_and_what_is_missing() throws IOException {
        stage.write("biscuits/recipe.md", RECIPE);
        stage.write(
                "biscuits/narration/main.txt",
                "[0:02] shot five take one so the butter melts\n[0:20] shot five take two once more\n[0:40] slate six and now the oats\n");
        film("main.mp4");
        film("shot-7.mp4");
        film("from above.mp4");

        JsonNode log = log("biscuits");

        Map<Integer, String> standings = standings(log);
        assertThat(standings)
                .containsEntry(5, "slated")
                .containsEntry(6, "slated")
                .containsEntry(7, "slated");
        standings.keySet().removeAll(java.util.Set.of(5, 6, 7));
        assertThat(standings.values()).containsOnly("missing");
        JsonNode fifth = log.get("shots").get(4);
        assertThat(fifth.get("called").asInt()).isEqualTo(2);
        assertThat(fifth.get("places").get(0).get("to").asDouble())
                .isEqualTo(fifth.get("places").get(1).get("from").asDouble());
        assertThat(log.get("silent"))
                .hasSize(1)
                .first()
                .extracting(JsonNode::asText)
                .isEqualTo("footage/from above.mp4");
        assertThat(stage.run("log", "biscuits").out())
                .contains("In no film", "        see  ", "Nobody speaks in these films")
                .contains("2 of ");
        assertThat(stage.run("log", "biscuits", "--csv").out())
                .startsWith("shot,step,set-up,standing,film,from,to,take,see,say\n");
    }

    @Test
    void what_is_filmed_but_not_spoken_of_is_to_be_looked_for() throws IOException {
        stage.write("biscuits/recipe.md", RECIPE);
        stage.write("biscuits/narration/main.txt", "[0:02] melt the butter\n[0:20] stir in the oats\n");
        film("main.mp4");

        Map<Integer, String> standings = standings(log("biscuits"));

        assertThat(standings.values()).contains("spoken", "look", "missing").doesNotContain("slated");
    }

    @Test
    void without_a_film_it_says_where_to_put_one() {
        stage.write("biscuits/recipe.md", RECIPE);
        OnStage.Ran ran = stage.run("log", "biscuits");
        assertThat(ran.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.err()).contains("footage", "there is no film to log");
    }
}
