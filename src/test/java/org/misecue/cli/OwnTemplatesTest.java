package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** An episode's own shot templates take the place of the program's; a broken one is one sentence with its place. */
class OwnTemplatesTest {

    private static final String FOLDER = "sample-project/shot-templates";

    @TempDir
    Path temp;

    private OnStage stage;

    @BeforeEach
    void sample() {
        stage = new OnStage(temp).withSample();
    }

    private void refused(String sentence) {
        assertThat(stage.run("shots", "sample-project", "--quiet"))
                .isEqualTo(new OnStage.Ran(ExitCode.BAD_INPUT, "", "misecue: " + sentence + "\n"));
    }

    @Test
    void the_episodes_own_template_is_used() {
        stage.write(FOLDER + "/ours.yaml", """
                technique: whip
                adds: around
                coverage:
                  - {setup: orchard, camera: from a ladder, see: "{ingredients} under the trees", sound: birds}
                """);
        assertThat(stage.run("shots", "sample-project", "--quiet").out())
                .contains("orchard – whip – ", "double cream and icing sugar under the trees", "orchard: shot ")
                .doesNotContain("the trail of the whisk");
    }

    @ParameterizedTest
    @CsvFileSource(resources = "own-template-faults.csv", numLinesToSkip = 1)
    void a_broken_one_is_told_in_one_sentence(String text, String sentence) {
        stage.write(FOLDER + "/x.yaml", text == null ? "" : text.replace("\\n", "\n"));
        refused("shot-templates/x.yaml" + sentence);
    }

    @Test
    void one_that_swells_by_aliases_is_told_with_the_line_where_that_begins() {
        StringBuilder yaml = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 30; i++) {
            yaml.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
        }
        stage.write(FOLDER + "/x.yaml", yaml.toString());
        refused(
                "shot-templates/x.yaml:7:10: this is not YAML that can be read; write “technique: fold” and what follows.");
    }

    @Test
    void a_folder_named_like_one() throws IOException {
        Files.createDirectories(stage.path(FOLDER + "/x.yaml"));
        refused("shot-templates/x.yaml: this is a folder or a broken link, not a template; rename it or take it out.");
    }

    @Test
    void a_file_in_place_of_the_folder() {
        stage.write(FOLDER, "technique: fold\n");
        refused("shot-templates: this is a file where the folder of the episode's own templates is looked for; rename"
                + " it.");
    }
}
