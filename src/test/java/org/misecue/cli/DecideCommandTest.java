package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A small episode from the first comparison to the sheet that is signed. */
class DecideCommandTest {

    private static final String RECIPE =
            "# Buns\n\n## Ingredients\n\n- 500 g plain flour\n- 80 g caster sugar\n\n## Method\n\n1. Mix the flour and sugar.\n";
    private static final String SAID =
            "[0:05] I sift five hundred grams of plain flour\n[0:20] and then a hundred grams of caster sugar\n";

    @TempDir
    private Path folder;

    private OnStage stage;

    @BeforeEach
    void there_is_an_episode() {
        stage = new OnStage(folder);
        stage.write("buns/recipe.md", RECIPE);
        stage.write("buns/narration/main.txt", SAID);
    }

    private OnStage.Ran decide(String... more) {
        String[] all = new String[more.length + 4];
        all[0] = "decide";
        all[1] = "buns";
        all[2] = "--by=Nell";
        all[3] = "--when=2026-05-04 10:00";
        System.arraycopy(more, 0, all, 4, more.length);
        return stage.run(all);
    }

    @Test
    void a_decision_ends_the_difference_for_compare_until_something_else_is_said() {
        assertThat(stage.run("compare", "buns").exit()).isEqualTo(ExitCode.DIFFERS);
        assertThat(decide().exit()).isEqualTo(ExitCode.DIFFERS);

        OnStage.Ran taken = decide("--keep", "sugar", "--note", "sweeter is better");
        assertThat(taken.exit()).isZero();
        assertThat(taken.out()).contains("All 1 decided", "keep as filmed (Nell, 2026-05-04 10:00: sweeter is better)");
        OnStage.Ran compared = stage.run("compare", "buns");
        assertThat(compared.exit()).isZero();
        assertThat(compared.out()).contains("Decided: keep as filmed");

        stage.write("buns/narration/main.txt", SAID.replace("a hundred", "ninety"));
        assertThat(stage.run("compare", "buns").exit()).isEqualTo(ExitCode.DIFFERS);
        assertThat(decide().out()).contains("decided before it changed");
    }

    @Test
    void a_recipe_that_was_fixed_is_no_matter_any_more() {
        decide("--fix", "sugar");
        stage.write("buns/recipe.md", RECIPE.replace("80 g", "100 g"));

        OnStage.Ran after = decide();
        assertThat(after.exit()).isZero();
        assertThat(after.out()).contains("Nothing is to be decided.", "no longer a matter", "fix the recipe");
    }

    @Test
    void a_decision_can_be_taken_back() {
        decide("--pickup", "sugar");
        assertThat(decide("--undo", "sugar").exit()).isEqualTo(ExitCode.DIFFERS);
        assertThat(decide("--undo", "sugar").exit()).isEqualTo(ExitCode.BAD_INPUT);
    }

    @Test
    void the_lists_say_what_to_film_and_what_to_cut() {
        decide("--pickup", "sugar");
        assertThat(decide("--pickups").out()).contains("“Eighty grams of caster sugar.”", "0:20");
        assertThat(decide("--fixes").out()).contains("cut in the pick-up for “80 g caster sugar”");
    }

    @Test
    void the_document_for_other_programs_tells_state_and_what_blocks() throws IOException {
        JsonNode json = new ObjectMapper().readTree(decide("--json").out());
        assertThat(json.get("undecided").asInt()).isEqualTo(1);
        assertThat(json.get("blocking").asInt()).isEqualTo(1);
        assertThat(json.get("matters").get(0).get("about").asText()).isEqualTo("caster sugar");
        assertThat(json.get("matters").get(0).get("state").asText()).isEqualTo("undecided");
    }

    @Test
    void the_sheet_to_sign_holds_inputs_verdicts_and_decisions_on_no_more_than_three_pages() throws IOException {
        decide("--pickup", "sugar", "--sign-off");
        byte[] pdf = Files.readAllBytes(folder.resolve("buns/out/sign-off.pdf"));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isBetween(1, 3);
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Not ready.", "500 g plain flour", "film a pick-up", "narration/main.txt", "4 May 2026");
        }
        decide("--keep", "sugar", "--sign-off");
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(folder.resolve("buns/out/sign-off.pdf")))) {
            assertThat(new PDFTextStripper().getText(document)).contains("Ready: everything is decided and done.");
        }
    }

    @Test
    void the_same_input_gives_the_same_sheet() throws IOException {
        decide("--sign-off");
        byte[] first = Files.readAllBytes(folder.resolve("buns/out/sign-off.pdf"));
        decide("--sign-off");
        assertThat(Files.readAllBytes(folder.resolve("buns/out/sign-off.pdf"))).isEqualTo(first);
    }

    @Test
    void bad_words_and_times_are_told_in_one_sentence_and_change_nothing() {
        assertThat(decide("--keep", "chocolate").err()).contains("nothing of “chocolate” is to be decided");
        OnStage.Ran time = stage.run("decide", "buns", "--keep", "sugar", "--when", "noon");
        assertThat(time.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(time.err()).contains("--when").contains("2026-05-04 10:00");
        assertThat(folder.resolve("buns/.misecue/decisions.yaml")).doesNotExist();
    }

    @Test
    void a_claim_that_an_ingredient_contradicts_comes_first_and_counts_as_a_difference() {
        stage.write(
                "buns/narration/main.txt",
                SAID.replace("a hundred", "eighty") + "[0:40] so this one is completely gluten free\n");

        OnStage.Ran compared = stage.run("compare", "buns");
        assertThat(compared.exit()).isEqualTo(ExitCode.DIFFERS);
        assertThat(compared.out()).contains("Claims that the ingredients contradict", "“gluten free”");
        assertThat(compared.out().indexOf("Claims that the ingredients contradict"))
                .isLessThan(compared.out().indexOf("Said or shown as written"));
        assertThat(decide("--pickup", "claim gluten").exit()).isZero();
    }
}
