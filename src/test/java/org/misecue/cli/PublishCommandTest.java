package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the draft to what goes out, and to the correction of it. */
class PublishCommandTest {

    private static final String RECIPE =
            "# Buns\n\nMakes 12\n\n## Ingredients\n\n- 500 g plain flour\n- 80 g caster sugar\n\n## Method\n\n1. Mix the flour and sugar.\n";

    @TempDir
    private Path folder;

    private OnStage stage;

    @BeforeEach
    void there_is_an_episode() {
        stage = new OnStage(folder);
        stage.write("buns/recipe.md", RECIPE);
        stage.write(
                "buns/narration/main.txt",
                "[0:05] I sift five hundred grams of plain flour\n[0:20] and then a hundred grams of caster sugar\n");
    }

    private OnStage.Ran describe(String... more) {
        String[] all = new String[more.length + 4];
        all[0] = "describe";
        all[1] = "buns";
        all[2] = "--by=Nell";
        all[3] = "--on=2026-11-26";
        System.arraycopy(more, 0, all, 4, more.length);
        return stage.run(all);
    }

    @Test
    void a_text_with_something_undecided_is_a_draft_and_is_not_published() {
        assertThat(describe().out())
                .startsWith("DRAFT – NOT FOR PUBLISHING. 1 matter keeps this from being published: caster sugar.");
        assertThat(describe("--json").out()).contains("\"Draft\"");

        OnStage.Ran refused = describe("--publish");
        assertThat(refused.exit()).isEqualTo(ExitCode.DIFFERS);
        assertThat(refused.out()).isEmpty();
        assertThat(refused.err()).contains("caster sugar", "misecue decide", "--anyway");
        assertThat(folder.resolve("buns/.misecue/published.yaml")).doesNotExist();
    }

    @Test
    void a_decision_frees_it_and_the_text_is_no_draft_any_more() {
        stage.run("decide", "buns", "--pickup", "sugar");
        OnStage.Ran published = describe("--publish");
        assertThat(published.exit()).isZero();
        assertThat(published.out()).startsWith("Buns\n").contains("80 g").contains("caster sugar");
        assertThat(describe().out()).startsWith("Buns\n");
    }

    @Test
    void a_recipe_that_is_to_be_fixed_is_not_published_before_it_is() {
        stage.run("decide", "buns", "--fix", "sugar");
        assertThat(describe("--publish").exit()).isEqualTo(ExitCode.DIFFERS);
        stage.write("buns/recipe.md", RECIPE.replace("80 g", "100 g"));
        assertThat(describe("--publish").exit()).isZero();
    }

    @Test
    void a_reason_overrides_and_is_kept_for_the_sheet() throws IOException {
        assertThat(describe("--publish", "--anyway", "the card says it right").exit())
                .isZero();
        assertThat(Files.readString(folder.resolve("buns/.misecue/published.yaml")))
                .contains("anyway: \"the card says it right\"", "by: \"Nell\"", "2026-11-26");
        assertThat(describe("--anyway", "why not").exit()).isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void the_correction_compares_what_went_out_with_what_is_written_now() {
        assertThat(describe("--erratum").exit()).isEqualTo(ExitCode.BAD_INPUT);
        describe("--publish", "--anyway", "late");
        assertThat(describe("--erratum").out()).isEqualTo("Nothing that was published has changed.\n");

        stage.write("buns/recipe.md", RECIPE.replace("80 g", "90 g"));
        assertThat(describe("--erratum").out())
                .startsWith("Correction, 26 November 2026: it is 90 g caster sugar, not 80 g. "
                        + "The film gives another figure at 0:20: please go by the one written here.\n")
                .contains("To cover in the film", "“90 g caster sugar”");
    }

    @Test
    void a_claim_that_is_wrong_keeps_the_text_from_being_published_even_before_there_is_a_film() throws IOException {
        Files.delete(folder.resolve("buns/narration/main.txt"));
        assertThat(describe("--publish").exit()).isZero();
        stage.write("buns/episode.yaml", "title: Gluten free buns\n");
        OnStage.Ran refused = describe("--publish");
        assertThat(refused.exit()).isEqualTo(ExitCode.DIFFERS);
        assertThat(refused.err()).contains("claim: gluten");
    }

    @Test
    void a_template_of_ones_own_takes_the_place_of_ours() {
        stage.run("decide", "buns", "--keep", "sugar");
        stage.write(
                "buns/publish-templates/description.txt",
                "{{title}} today!\n{{#allergens}}{{#sentences}}{{sentence}}\n{{/sentences}}{{/allergens}}");
        assertThat(describe().out()).startsWith("Buns today!\nContains: wheat");

        stage.write("buns/publish-templates/description.txt", "{{titel}}\n");
        OnStage.Ran wrong = describe();
        assertThat(wrong.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(wrong.err()).contains("publish-templates/description.txt:1", "titel", "title");
    }

    @Test
    void what_goes_in_on_camera_only_is_named_with_its_allergens() {
        stage.write(
                "buns/narration/main.txt",
                "[0:05] I sift five hundred grams of plain flour\n[0:20] and then eighty grams of caster sugar\n"
                        + "[0:40] and I'm adding two tablespoons of sesame seeds, they're not in the recipe\n");
        stage.run("decide", "buns", "--keep", "sesame");

        assertThat(describe().out())
                .contains("The film adds sesame seeds, which this recipe does not have: it contains sesame.")
                .doesNotContain("free of");
    }
}
