package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.cli.OnStage.Ran;

/** {@code index --in} and {@code find --in}. */
class ArchiveCommandsTest {

    private static final String RECIPE = "# Tart\n\n- 100 g flour\n\n## Method\n\n1. Fold in the flour.\n";

    @TempDir
    Path folder;

    private OnStage stage;

    @BeforeEach
    void episodes() {
        stage = new OnStage(folder);
        stage.write("shelf/plum-tart/recipe.md", RECIPE);
        stage.write(
                "shelf/plum-tart/narration/main.txt", "[0:10] the pistachios go in\n[1:00] a few pistachios more\n");
        stage.write("shelf/season-2/buns/recipe.md", RECIPE);
        stage.write("shelf/season-2/buns/narration/main.txt", "[0:20] knead it with pistachios pistachios\n");
    }

    @Test
    void people_read_each_episode_with_its_moments() {
        assertThat(stage.run("find", "--in", "shelf", "pistachios")).isEqualTo(new Ran(0, """
                                season-2/buns
                                    0:21  knead it with [pistachios] [pistachios]
                                          narration/main.txt

                                plum-tart
                                    0:22  the [pistachios] go in
                                          narration/main.txt
                                    1:01  a few [pistachios] more
                                          narration/main.txt
                                """, ""));
    }

    @Test
    void programs_read_the_contract_with_the_episode() throws IOException {
        JsonNode json = new ObjectMapper()
                .readTree(stage.run("find", "--json", "--in", "shelf", "knead", "pis")
                        .out());
        assertThat(json.get("query").textValue()).isEqualTo("knead pis");
        assertThat(json.get("hits")).hasSize(1);
        JsonNode hit = json.get("hits").get(0);
        assertThat(hit.get("episode").textValue()).isEqualTo("season-2/buns");
        assertThat(hit.get("source").textValue()).isEqualTo("narration/main.txt");
        assertThat(hit.get("at").decimalValue()).isEqualByComparingTo("20.0");
        assertThat(hit.has("end") && hit.has("quote") && hit.has("step") && hit.has("score"))
                .isTrue();
    }

    @Test
    void the_index_is_made_once_and_lies_in_the_archive_alone() {
        assertThat(stage.run("index", "--in", "shelf").out())
                .isEqualTo("2 episodes can be searched now, 2 indexed anew: misecue find WORDS --in ARCHIVE\n");
        assertThat(stage.run("index", "--in", "shelf").out())
                .contains("2 episodes can be searched now, 0 indexed anew");
        assertThat(stage.contents().keySet())
                .filteredOn(file -> file.contains(".misecue"))
                .isNotEmpty()
                .allMatch(file -> file.startsWith("shelf/.misecue/index/"));
    }

    @Test
    void a_bad_episode_is_noted_beside_the_result() {
        stage.write("shelf/bad/recipe.md", "");
        stage.write("shelf/bad/narration/main.txt", "[0:05] pistachios\n");
        Ran found = stage.run("find", "--in", "shelf", "pistachios");
        assertThat(found.exit()).isZero();
        assertThat(found.out()).contains("bad\n    0:05  [pistachios]");
        assertThat(found.err()).startsWith("note: bad/recipe.md: ");
        assertThat(stage.run("find", "--in", "shelf", "pistachios").err())
                .as("told once")
                .isEmpty();
        assertThat(stage.run("index", "--in", "shelf").err()).startsWith("note: bad/recipe.md: ");
    }

    @Test
    void what_cannot_be_said_of_an_archive_is_a_sentence() {
        assertThat(stage.run("find", "--in", "shelf", "-e", "shelf/plum-tart", "pistachios")
                        .exit())
                .isEqualTo(2);
        assertThat(stage.run("find", "--in", "shelf", "pistachios", "--clip").exit())
                .isEqualTo(2);
        assertThat(stage.run("index", "--in", "shelf", "shelf/plum-tart").exit())
                .isEqualTo(2);
        assertThat(stage.run("find", "--in", "shelf/plum-tart", "pistachios").err())
                .contains("this is one episode, and an archive is a folder of them");
        assertThat(stage.run("find", "--in", "none", "pistachios").err()).contains("there is no such folder");
        stage.write("empty/notes.csv", "");
        assertThat(stage.run("find", "--in", "empty", "pistachios").err()).contains("there are no episodes");
        assertThat(stage.path("empty/.misecue")).doesNotExist();
    }
}
