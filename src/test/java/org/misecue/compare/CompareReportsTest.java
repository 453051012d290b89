package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.narration.Moment;
import org.misecue.page.Pdf;
import org.misecue.pantry.Pantry;
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

    private Comparison comparison() throws IOException {
        Path file = Files.writeString(folder.resolve("recipe.md"), RECIPE);
        return Comparer.compare(
                RecipeReader.read(file, "recipe.md"),
                List.of(Speech.narration("ninety grams of <i>caster sugar and 3 eggs then a teaspoon of rose water")),
                Pantry.standard());
    }

    @Test
    void the_json_keeps_the_contract() throws IOException {
        JsonNode json = new ObjectMapper().readTree(CompareJson.of(comparison()));
        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly("title", "factor", "written", "settings", "unwritten");
        JsonNode sugar = json.get("written").get(0);
        assertThat(sugar.get("ingredient").asText()).isEqualTo("caster sugar");
        assertThat(sugar.get("amount").asInt()).isEqualTo(75);
        assertThat(sugar.get("amountMax").isNull()).isTrue();
        assertThat(sugar.get("unit").asText()).isEqualTo("g");
        assertThat(sugar.get("verdict").asText()).isEqualTo("differs");
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
        Comparison comparison = comparison();
        Moment moment = comparison.written().get(0).evidence().get(0).moment();
        String page = ComparePage.html(comparison, Map.of(moment, "stills/a.png"), Map.of(moment, "clips/a.mp4"));
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
    void the_text_puts_what_differs_first() throws IOException {
        assertThat(CompareText.of(comparison())).isEqualTo("""
                        <script>alert(1)</script> & friends

                        Differs from the recipe
                          75 g caster sugar
                              Said as 90 g; 75 g is written.
                              0:00  “ninety grams of <i>caster sugar and 3 eggs then a”

                        Added on camera, not in the recipe
                          rose water: 1 tsp
                              0:04  “grams of <i>caster sugar and 3 eggs then a teaspoon of rose water”

                        Never said with an amount
                          2 tsp "<b>" ginger & spice
                          Bake: 20 minutes (step 2)

                        Said as written
                          3 eggs
                              0:03  “ninety grams of <i>caster sugar and 3 eggs then a teaspoon of rose water”
                        """);
    }
}
