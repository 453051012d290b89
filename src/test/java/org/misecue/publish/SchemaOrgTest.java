package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;

/** Names of properties: schema-dts 2.1.0, which is made from schema.org's own vocabulary. */
class SchemaOrgTest {

    @Test
    void the_document_is_a_recipe() throws IOException {
        JsonNode json = parsed(TestRecipes.asWritten(TestRecipes.pearCake()));

        assertThat(json.get("@context").asText()).isEqualTo("https://schema.org");
        assertThat(json.get("@type").asText()).isEqualTo("Recipe");
        assertThat(json.get("name").asText()).isEqualTo("Pear and rye cake");
        assertThat(json.get("recipeYield").asText()).isEqualTo("12 slices");
        assertThat(json.at("/tool/0/name").asText()).isEqualTo("2 × 20 cm round cake tins");
        assertThat(json.get("recipeInstructions")).hasSize(4);
        assertThat(json.at("/recipeInstructions/1/@type").asText()).isEqualTo("HowToStep");
        assertThat(json.at("/recipeInstructions/1/position").asInt()).isEqualTo(2);
        assertThat(json.at("/recipeInstructions/1/text").asText())
                .isEqualTo("In a large bowl, beat the butter and sugar until pale. Scrape down the sides.");
    }

    @Test
    void preparation_and_cooking_make_the_total() throws IOException {
        JsonNode json = parsed(TestRecipes.asWritten(TestRecipes.pearCake()));

        Duration prep = Duration.parse(json.get("prepTime").asText());
        Duration cook = Duration.parse(json.get("cookTime").asText());
        assertThat(cook).isEqualTo(Duration.ofMinutes(30));
        assertThat(Duration.parse(json.get("totalTime").asText())).isEqualTo(prep.plus(cook));
    }

    @Test
    void read_back_the_amounts_are_those_that_were_weighed() throws IOException {
        ScaledRecipe published = TestRecipes.times(TestRecipes.pearCake(), Rationals.of(2));

        List<WeighedLine> lines = published.lines();
        JsonNode json = parsed(published).get("recipeIngredient");
        assertThat(json).hasSameSizeAs(lines);
        for (int i = 0; i < lines.size(); i++) {
            IngredientLine written = lines.get(i).written();
            assertThat(new QuantityReader().read(json.get(i).asText()).map(found -> found.quantity()))
                    .as(written.text())
                    .isEqualTo(lines.get(i).weighed());
        }
    }

    @Test
    void no_text_can_end_the_script_element_and_none_is_lost() throws IOException {
        Recipe nasty = new Recipe(
                "Loaf </script><script>alert(\"1\")</script> & “more” 🍞",
                List.of(TestRecipes.component("", "100 g flour <!-- ", "3 eggs \\ \"large\"")),
                List.of(TestRecipes.step(1, "Knead \u2028</SCRIPT> well.")),
                List.of(),
                List.of(),
                "loaf.md");

        String json = SchemaOrg.json(Edition.of(TestRecipes.asWritten(nasty), Pantry.standard()));

        assertThat(json).doesNotContain("<", ">", "&", "\u2028");
        JsonNode parsed = new ObjectMapper().readTree(json);
        assertThat(parsed.get("name").asText()).isEqualTo("Loaf ‹/script›‹script›alert(\"1\")‹/script› & “more” 🍞");
        assertThat(parsed.at("/recipeIngredient/1").asText()).isEqualTo("3 eggs \\ \"large\"");
    }

    private static JsonNode parsed(ScaledRecipe published) throws IOException {
        return new ObjectMapper().readTree(SchemaOrg.json(Edition.of(published, Pantry.standard())));
    }
}
