package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OwnPantryTest {

    @TempDir
    Path temp;

    private OnStage stage;

    @BeforeEach
    void sample() {
        stage = new OnStage(temp).withSample();
    }

    @Test
    void the_episodes_own_pantry_is_used_by_its_commands() {
        String before = stage.run("prep", "sample-project").out();
        stage.write("sample-project/pantry.yaml", "- {name: hazelnuts, contains: [mustard], aisle: orchard}\n");
        OnStage.Ran ran = stage.run("prep", "sample-project");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.exit()).isZero();
        assertThat(before).doesNotContain("orchard");
        assertThat(ran.out()).contains("orchard: ").contains("MUSTARD");
    }

    @Test
    void what_moved_is_told_once() {
        stage.write("sample-project/pantry.yaml", "- {name: my spread, also: [tahini]}\n");
        assertThat(stage.run("prep", "sample-project").err())
                .isEqualTo("note: pantry.yaml:1: “tahini” was a name of “tahini” and now means “my spread”.\n");
    }

    @Test
    void a_mistake_ends_every_command_with_its_line() {
        stage.write("sample-project/pantry.yaml", "- name: tahini\n  gram: {tbsp: 15}\n");
        for (String command : new String[] {"read", "prep", "compare", "describe", "shots"}) {
            OnStage.Ran ran = stage.run(command, "sample-project");
            assertThat(ran.exit()).as(command).isEqualTo(2);
            assertThat(ran.err()).contains("pantry.yaml:2: unknown key “gram”; did you mean “grams”?");
        }
        assertThat(stage.run("read", "sample-project/recipe.md").exit()).isEqualTo(2);
    }

    @Test
    void a_folder_in_its_place_is_one_sentence() throws Exception {
        Files.createDirectories(stage.path("sample-project/pantry.yaml"));
        OnStage.Ran ran = stage.run("prep", "sample-project");
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err()).contains("pantry.yaml: the file cannot be read");
    }

    @Test
    void the_result_is_never_written_over_it() {
        stage.write("sample-project/pantry.yaml", "# nothing yet\n");
        assertThat(stage.run("prep", "sample-project", "--out", "sample-project/pantry.yaml")
                        .exit())
                .isEqualTo(2);
    }

    @Test
    void the_pantry_at_home_holds_for_every_episode_and_the_episodes_lies_over_it() {
        stage.write(
                "home/.misecue/pantry.yaml", "- {name: hazelnuts, aisle: at home}\n- {name: tahini, aisle: at home}\n");
        stage.write("sample-project/pantry.yaml", "- {name: tahini, aisle: beside the recipe}\n");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
        Misecue.run(
                new String[] {"prep", "sample-project"},
                new Stage(print, print, temp, false, Optional.of(temp.resolve("home")), Optional::empty));
        assertThat(out.toString(StandardCharsets.UTF_8))
                .contains("at home: ")
                .contains("beside the recipe: ")
                .doesNotContain("at home: tahini");
    }
}
