package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code compare --explain} as it is typed. */
class ExplainTest {

    @TempDir
    Path temp;

    private OnStage stage() {
        return new OnStage(temp);
    }

    @BeforeEach
    void an_episode() {
        stage().write("buns/recipe.txt", "Buns\n\nIngredients\n\n500 g plain flour\n\nMethod\n\n1. Sift the flour.\n");
        stage().write("buns/narration/main.txt", "[0:05] I sift five hundred grams of plain flour\n");
    }

    @Test
    void tells_the_way_to_the_verdict_and_ends_as_compare_does() {
        OnStage.Ran ran = stage().run("compare", "buns", "--explain", "plain flour");
        assertThat(ran.out()).contains("500 g plain flour", "– agrees", "Heard as 500 g; named by “plain flour”");
        assertThat(ran.exit()).isEqualTo(ExitCode.OK);
        stage().write("buns/narration/main.txt", "[0:05] I sift nine hundred grams of plain flour\n");
        OnStage.Ran differs = stage().run("compare", "buns", "--explain", "flour", "--json");
        assertThat(differs.out()).startsWith("{").contains("\"verdict\" : \"differs\"");
        assertThat(differs.exit()).isEqualTo(ExitCode.DIFFERS);
    }

    @Test
    void words_that_mean_nothing_are_bad_input() {
        assertThat(stage().run("compare", "buns", "--explain", "rye flower"))
                .isEqualTo(new OnStage.Ran(
                        ExitCode.BAD_INPUT,
                        "",
                        "misecue: recipe.txt: no ingredient and no setting is called “rye flower”; the nearest are “plain"
                                + " flour”.\n"));
    }
}
