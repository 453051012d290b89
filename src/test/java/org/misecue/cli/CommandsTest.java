package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every command on a copy of the sample episode. */
class CommandsTest {

    @TempDir
    Path temp;

    private OnStage stage;

    @BeforeEach
    void the_sample() {
        stage = new OnStage(temp).withSample();
    }

    private Path out(String name) {
        return temp.resolve("sample-project/out").resolve(name);
    }

    private static JsonNode json(String text) throws IOException {
        return new ObjectMapper().readTree(text);
    }

    @Test
    void new_makes_an_episode_that_can_be_made() {
        stage.write("plait.txt", "Plum plait\n\nIngredients\n\n500 g plums\n\nMethod\n\n1. Plait the plums.\n");
        OnStage.Ran ran = stage.run("new", "plait.txt");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).isEqualTo("""
                        Made plum-plait. Put narrations into narration/ and films into footage/, then:
                          misecue make plum-plait
                        """);
        assertThat(stage.path("plum-plait/recipe.txt")).hasSameBinaryContentAs(stage.path("plait.txt"));
        assertThat(stage.run("make", "plum-plait").exit()).isZero();
        OnStage.Ran again = stage.run("new", "plait.txt");
        assertThat(again.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(again.err())
                .isEqualTo(
                        "misecue: plum-plait: this folder has something in it already; choose a new or an empty one.\n");
    }

    /** What the recipe does not say for certain must reach whoever weighs, speaks or publishes by it. */
    @ParameterizedTest
    @ValueSource(strings = {"read", "compare", "prep", "shots", "describe"})
    void every_command_tells_of_an_amount_that_cannot_be_read(String command) {
        stage.write(
                "sample-project/recipe.md",
                "# Bun\n\nMakes 1 bun\n\n## Ingredients\n\n- 17,5,3 g unsalted butter\n- 20 g sugar\n\n"
                        + "## Method\n\n1. Cream the butter and sugar.\n");
        OnStage.Ran ran = stage.run(command, "sample-project");
        assertThat(ran.out() + ran.err())
                .contains("recipe.md:7: the amount in \"17,5,3 g unsalted butter\" cannot be right");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"0 g butter", "-5 g butter", "1e9 g butter", "½½ tsp salt", "1//2 tsp salt", "12..5 g butter"})
    void reading_an_amount_that_is_none_ends_as_bad_input_with_one_sentence(String line) {
        stage.write(
                "bun.md",
                "# Bun\n\nMakes 1 bun\n\n## Ingredients\n- " + line + "\n- 20 g sugar\n\n## Method\n1. Mix all.\n");
        OnStage.Ran ran = stage.run("read", "bun.md");
        assertThat(ran.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.err().strip())
                .startsWith("misecue: bun.md:6: the amount in \"" + line + "\"")
                .endsWith("write it as 225 g or 1½ tsp.")
                .doesNotContain("\n");
        assertThat(ran.out()).contains("sugar", line);
    }

    @Test
    void read_shows_a_recipe_by_file_or_by_episode() throws IOException {
        OnStage.Ran byFile = stage.run("read", "sample-project/recipe.md", "--json");
        JsonNode recipe = json(byFile.out());
        assertThat(recipe.get("components").size()).isEqualTo(3);
        assertThat(recipe.get("components")
                        .get(1)
                        .get("lines")
                        .get(0)
                        .get("text")
                        .asText())
                .isEqualTo("175 g unsalted butter, softened");
        assertThat(stage.run("read", "sample-project").out()).contains("unsalted butter", "line 17");
    }

    @Test
    void prep_is_text_json_page_and_print() throws IOException {
        assertThat(stage.run("prep", "sample-project").out()).contains("Take the butter out of the fridge");
        assertThat(json(stage.run("prep", "sample-project", "--json").out())
                        .get("bowls")
                        .size())
                .isGreaterThan(20);
        OnStage.Ran pages = stage.run("prep", "sample-project", "--html", "--pdf");
        assertThat(pages.out()).isEmpty();
        assertThat(pages.err())
                .contains(
                        "made sample-project/out/prep.html",
                        "made sample-project/out/prep.pdf",
                        "made sample-project/out/labels.pdf");
        assertThat(Files.readAllBytes(out("prep.pdf"))).startsWith('%', 'P', 'D', 'F');
        assertThat(Files.readAllBytes(out("labels.pdf"))).startsWith('%', 'P', 'D', 'F');
    }

    @Test
    void shots_is_text_json_table_and_page() throws IOException {
        assertThat(stage.run("shots", "sample-project").out()).contains("camera");
        assertThat(json(stage.run("shots", "sample-project", "--json").out()).get("shots"))
                .isNotEmpty();
        assertThat(stage.run("shots", "sample-project", "--csv").out().lines().findFirst())
                .hasValueSatisfying(head -> assertThat(head).contains(",camera"));
        stage.run("shots", "sample-project", "--html");
        assertThat(out("shots.html")).content().startsWith("<!DOCTYPE html>");
    }

    @Test
    void find_makes_the_index_when_it_must_and_only_then() throws IOException {
        OnStage.Ran first = stage.run("find", "tahini", "-e", "sample-project");
        assertThat(first.exit()).isZero();
        assertThat(first.out()).contains("four tablespoons of [tahini]", "step 9 · narration/main.vtt");
        Path stamp = temp.resolve("sample-project/.misecue/index.stamp");
        var made = Files.getLastModifiedTime(stamp);
        assertThat(stage.run("find", "tahini", "-e", "sample-project")).isEqualTo(first);
        assertThat(Files.getLastModifiedTime(stamp)).isEqualTo(made);
        Files.writeString(
                temp.resolve("sample-project/narration/pickup.txt"), "[0:05] a little marmalade on the side\n");
        JsonNode hits = json(stage.run("find", "marmalade", "--json", "-e", "sample-project")
                        .out())
                .get("hits");
        assertThat(hits.get(0).get("source").asText()).isEqualTo("narration/pickup.txt");
        assertThat(hits.get(0).get("at").asDouble()).isBetween(5.0, 10.0);
    }

    @Test
    void find_takes_words_that_the_shell_keeps_together_as_a_phrase() throws IOException {
        JsonNode hits = json(stage.run("find", "soft peaks", "--json", "-e", "sample-project")
                        .out())
                .get("hits");
        assertThat(StreamSupport.stream(hits.spliterator(), false))
                .isNotEmpty()
                .allSatisfy(hit -> assertThat(hit.get("quote").asText()).contains("soft peaks"));
    }

    @Test
    void find_shows_the_moment_as_a_still_and_a_clip() throws IOException {
        OnStage.Ran ran = stage.run("find", "soft peaks", "-n", "1", "--still", "--clip", "-e", "sample-project");
        assertThat(ran.exit()).isZero();
        assertThat(ran.err())
                .containsPattern("made sample-project/out/stills/take-1-6\\.4\\d\\.png")
                .containsPattern("made sample-project/out/clips/take-1-6\\.4\\d\\.mp4");
    }

    @Test
    void compare_ends_with_one_when_something_differs_and_with_nought_when_nothing_does() throws IOException {
        OnStage.Ran ran = stage.run("compare", "sample-project", "--json");
        assertThat(ran.exit()).isEqualTo(ExitCode.DIFFERS);
        JsonNode butter = json(ran.out()).get("written").get(3);
        assertThat(butter.get("ingredient").asText()).isEqualTo("unsalted butter");
        assertThat(butter.get("verdict").asText()).isEqualTo("differs");
        stage.write("plain/recipe.txt", "Buns\n\nIngredients\n\n500 g plain flour\n\nMethod\n\n1. Sift the flour.\n");
        stage.write("plain/narration/main.txt", "[0:05] I sift five hundred grams of plain flour\n");
        assertThat(stage.run("compare", "plain")).satisfies(agreed -> {
            assertThat(agreed.exit()).isZero();
            assertThat(agreed.out()).contains("Said or shown as written");
        });
    }

    @Test
    void describe_is_the_text_or_the_schema_org_document() throws IOException {
        OnStage.Ran text = stage.run("describe", "sample-project");
        assertThat(text.out())
                .startsWith("DRAFT – NOT FOR PUBLISHING.")
                .contains("\n\nRoasted Plum and Hazelnut Cake with Tahini Cream\n");
        assertThat(text.err()).contains("note: recipe.md:17: ");
        assertThat(stage.run("describe", "sample-project", "--quiet").err()).isEmpty();
        assertThat(json(stage.run("describe", "sample-project", "--json").out())
                        .get("@type")
                        .asText())
                .isEqualTo("Recipe");
    }

    /** Pine nuts are on the Australian and New Zealand list (NSW Food Authority) and not among the EU's fourteen. */
    @Test
    void what_only_the_lists_of_other_countries_name_is_told_too_and_so_are_names_that_mislead() {
        stage.write(
                "plain/recipe.md",
                "# Buns\n\nMakes 6\n\n## Ingredients\n- 250 g cornflour\n- 50 g pine nuts\n\n## Method\n1. Mix all.\n");
        OnStage.Ran ran = stage.run("describe", "plain");
        assertThat(ran.out()).contains("Contains, by the lists of the US, Australia and New Zealand: pine nut.");
        assertThat(ran.err()).contains("recipe.md:6: “cornflour” may be taken for something else: in Britain");
        assertThat(stage.run("prep", "plain").out()).contains("Contains PINE NUT; check the label: NUTS");
    }

    @Test
    void a_saved_mail_may_be_the_recipe_of_an_episode() {
        stage.write(
                "post/recipe.eml",
                "From: somebody <a@example.org>\nSubject: Quince crumble\nMIME-Version: 1.0\n"
                        + "Content-Type: text/plain; charset=utf-8\nContent-Transfer-Encoding: quoted-printable\n\n"
                        + "Quince crumble\n\nServes 6\n\nIngredients\n150 g plain flour\n=C2=BD tsp cinnamon\n\n"
                        + "Method\n1. Mix the flour with the cinn=\namon.\n");
        assertThat(stage.run("read", "post").out())
                .contains("Quince crumble", "½    tsp  cinnamon", "uses plain flour, cinnamon");
    }

    @Test
    void out_names_a_file_for_the_result() {
        OnStage.Ran ran = stage.run("prep", "sample-project", "--out", "prep.txt");
        assertThat(ran.out()).isEmpty();
        assertThat(stage.path("prep.txt"))
                .hasContent(stage.run("prep", "sample-project").out());
    }

    @Test
    void no_input_is_ever_changed() {
        var before = stage.contents();
        for (String command : new String[] {"read", "prep", "shots", "index", "compare", "describe", "make"}) {
            stage.run(command, "sample-project");
        }
        assertThat(stage.contents()).containsAllEntriesOf(before);
    }
}
