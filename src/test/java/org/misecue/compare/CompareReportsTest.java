package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.narration.Moment;
import org.misecue.page.Pdf;
import org.misecue.pantry.Pantry;
import org.misecue.prep.Golden;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Speech;

class CompareReportsTest {

    private static final String RECIPE = """
            # <script>alert(1)</script> & friends

            ## Ingredients

            - 75 g caster sugar
            - 2 tsp "<b>" ginger & spice
            - 3 eggs

            ## Method

            1. Whisk the sugar and the eggs.
            2. Fold in the spice & bake for 20 minutes.
            """;

    @TempDir
    Path folder;

    private Recipe recipe() throws IOException {
        return RecipeReader.read(Files.writeString(folder.resolve("recipe.md"), RECIPE), "recipe.md");
    }

    private Findings findings() throws IOException {
        return Findings.of(comparison(), List.of(), recipe(), Pantry.standard());
    }

    private static Findings pearBuns() {
        return Findings.of(PearBuns.comparison(), List.of(), PearBuns.recipe(), Pantry.standard());
    }

    private static String pearBunsPage() {
        Moment moment = PearBuns.said(63, "", 0).moment();
        return ComparePage.html(pearBuns(), Map.of(moment, "stills/a.png"), Map.of(moment, "clips/a.mp4"), Map.of());
    }

    private Comparison comparison() throws IOException {
        return Comparer.compare(
                recipe(),
                List.of(Speech.narration("ninety grams of <i>caster sugar and 3 eggs then a teaspoon of rose water")),
                Pantry.standard());
    }

    @Test
    void the_json_keeps_the_contract() throws IOException {
        JsonNode json = new ObjectMapper().readTree(CompareJson.of(comparison(), List.of()));
        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly(
                        "title", "factor", "written", "settings", "unwritten", "unplaced", "claims", "heardOtherwise");
        JsonNode sugar = json.get("written").get(0);
        assertThat(sugar.get("ingredient").asText()).isEqualTo("caster sugar");
        assertThat(sugar.get("amount").asInt()).isEqualTo(75);
        assertThat(sugar.get("amountMax").isNull()).isTrue();
        assertThat(sugar.get("unit").asText()).isEqualTo("g");
        assertThat(sugar.get("verdict").asText()).isEqualTo("differs");
        assertThat(sugar.get("confidence").asDouble()).isEqualTo(1.0);
        assertThat(json.at("/settings/0/confidence").asDouble()).isEqualTo(0.9);
        assertThat(json.at("/unwritten/0/confidence").isNumber()).isTrue();
        JsonNode evidence = sugar.get("evidence").get(0);
        assertThat(evidence.fieldNames())
                .toIterable()
                .containsExactly("via", "source", "at", "amount", "unit", "quote");
        assertThat(evidence.get("via").asText()).isEqualTo("spoken");
        assertThat(evidence.get("amount").asInt()).isEqualTo(90);
        assertThat(json.get("settings").get(0).get("kind").asText()).isEqualTo("duration");
        assertThat(json.get("unwritten").get(0).get("ingredient").asText()).isEqualTo("rose water");
    }

    @Test
    void the_page_shows_markup_in_a_recipe_as_text() throws IOException {
        Moment moment = comparison().written().get(0).evidence().get(0).moment();
        String page =
                ComparePage.html(findings(), Map.of(moment, "stills/a.png"), Map.of(moment, "clips/a.mp4"), Map.of());
        assertThat(page)
                .doesNotContain("<script>")
                .doesNotContain("<i>caster")
                .contains("&lt;script&gt;")
                .contains("href=\"clips/a.mp4\"")
                .contains("src=\"stills/a.png\"")
                .contains("<mark>ninety grams</mark>");
        assertThat(Pdf.of(page)).startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    }

    @Test
    void the_page_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "pear-buns.html", pearBunsPage());
    }

    @Test
    void the_text_reads_as_in_the_golden_file() {
        Golden.check(getClass(), "pear-buns.txt", CompareText.of(pearBuns(), Map.of()));
    }

    @Test
    void every_anchor_is_there_once_and_every_link_within_the_page_leads_to_one() {
        List<String> anchors = all(pearBunsPage(), " id=\"([^\"]+)\"");
        assertThat(anchors).doesNotHaveDuplicates().contains("differs", "agrees", "line-1", "setting-2", "added-1");
        assertThat(anchors).containsAll(all(pearBunsPage(), " href=\"#([^\"]+)\""));
    }

    @Test
    void each_written_line_is_on_the_page_and_in_the_text_exactly_once() {
        List<String> headings = all(pearBunsPage(), "<h3>([^<]+)</h3>");
        String text = CompareText.of(pearBuns(), Map.of());
        for (LineVerdict line : PearBuns.comparison().written()) {
            String escaped = line.line()
                    .text()
                    .replace("&", "&amp;")
                    .replace("<", "&lt;")
                    .replace(">", "&gt;");
            assertThat(headings).containsOnlyOnce(escaped);
            assertThat(text).containsOnlyOnce("  " + line.line().text());
        }
    }

    @Test
    void ingredients_and_quotes_stay_text() {
        assertThat(pearBunsPage())
                .doesNotContain("<b>", "<i>four", "now & then", "milk & a")
                .contains("&lt;b&gt;", "now &amp; then <mark>&lt;i&gt;four hundred</mark> goes in");
    }

    @Test
    void the_page_asks_for_nothing_from_outside_and_runs_nothing() {
        assertThat(pearBunsPage()).doesNotContain("<script", "http:", "https:", "url(", "@import", "<link");
    }

    private static List<String> all(String page, String pattern) {
        return Pattern.compile(pattern)
                .matcher(page)
                .results()
                .map(match -> match.group(1))
                .toList();
    }

    @Test
    void the_text_puts_what_differs_first() throws IOException {
        assertThat(CompareText.of(findings(), Map.of())).isEqualTo("""
                        <script>alert(1)</script> & friends
                        1 differs, 1 added on camera, 2 never said, 1 agrees
                        2 of 2 undecided

                        Differs from the recipe
                          75 g caster sugar (step 1)
                              Said as 90 g; 75 g is written.
                              0:00  “ninety grams of <i>caster sugar and 3 eggs then a”

                        Added on camera, not in the recipe
                          1 tsp rose water
                              Said as 1 tsp; no line of the recipe has it.
                              0:04  “grams of <i>caster sugar and 3 eggs then a teaspoon of rose water”

                        Never said or shown with an amount: the description must have it
                          2 tsp "<b>" ginger & spice (step 2)
                          Bake: 20 minutes (step 2)

                        Said or shown as written
                          3 eggs (step 1)
                              0:03  “ninety grams of <i>caster sugar and 3 eggs then a teaspoon of rose water”
                        """);
    }
}
