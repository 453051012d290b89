package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import com.apicatalog.jsonld.JsonLd;
import com.apicatalog.jsonld.JsonLdError;
import com.apicatalog.jsonld.JsonLdErrorCode;
import com.apicatalog.jsonld.document.Document;
import com.apicatalog.jsonld.document.JsonDocument;
import jakarta.json.JsonArray;
import jakarta.json.JsonObject;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.WrittenQuantity;
import org.misecue.recipe.Recipe;
import org.misecue.scale.WeighedLine;

/** Our document as a JSON-LD processor that is not ours reads it, without the network. */
class JsonLdParserTest {

    private static final String VOCAB = "https://schema.org/";

    static List<Path> recipes() {
        return TestEditions.recipes();
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void it_reads_the_amounts_that_are_weighed(Path recipe) throws JsonLdError {
        Edition edition = TestEditions.of(recipe);
        JsonArray lines = expanded(SchemaOrg.json(edition)).getJsonArray(VOCAB + "recipeIngredient");

        assertThat(lines).hasSameSizeAs(edition.batch().lines()).isNotEmpty();
        for (int at = 0; at < lines.size(); at++) {
            WeighedLine line = edition.batch().lines().get(at);
            if (leads(line)) {
                Optional<Quantity> read = new QuantityReader()
                        .read(lines.getJsonObject(at).getString("@value"))
                        .map(WrittenQuantity::quantity);
                assertThat(read).as(line.written().text()).isEqualTo(line.weighed());
            }
        }
    }

    /** "Juice of 1 lemon" has its amount inside, where a reader of lines finds it and a reader of amounts does not. */
    private static boolean leads(WeighedLine line) {
        return new QuantityReader()
                .read(line.written().text())
                .map(WrittenQuantity::quantity)
                .equals(line.written().quantity());
    }

    @Test
    void it_reads_the_film_and_every_step() throws JsonLdError {
        JsonObject recipe = expanded(SchemaOrg.json(TestEditions.pearCake()));

        assertThat(recipe.getJsonArray("@type").getString(0)).isEqualTo(VOCAB + "Recipe");
        JsonObject film = recipe.getJsonArray(VOCAB + "video").getJsonObject(0);
        assertThat(value(film, "duration")).isEqualTo("PT4M35S");
        assertThat(film.getJsonArray(VOCAB + "hasPart")).hasSize(5);
        assertThat(recipe.getJsonArray(VOCAB + "recipeInstructions")).hasSize(4);
    }

    @Test
    void what_would_end_a_script_element_is_read_as_the_words_it_was() throws JsonLdError {
        Recipe nasty = new Recipe(
                "Loaf </script><!-- \u2028 & more",
                List.of(TestRecipes.component("", "100 g flour")),
                List.of(),
                List.of(),
                List.of(),
                "loaf.md");
        String json = SchemaOrg.json(Edition.of(TestRecipes.asWritten(nasty), Pantry.standard()));

        assertThat(json).doesNotContain("<", ">", "&", "\u2028", "\u2029");
        assertThat(value(expanded(json), "name")).isEqualTo("Loaf ‹/script›‹!-- & more");
    }

    private static String value(JsonObject node, String property) {
        return node.getJsonArray(VOCAB + property).getJsonObject(0).getString("@value");
    }

    private static JsonObject expanded(String json) throws JsonLdError {
        return JsonLd.expand(JsonDocument.of(new StringReader(json)))
                .loader(JsonLdParserTest::offline)
                .get()
                .getJsonObject(0);
    }

    /** Stands in for the published context, which is large; its names are those of the vocabulary. */
    private static Document offline(java.net.URI url, com.apicatalog.jsonld.loader.DocumentLoaderOptions options)
            throws JsonLdError {
        if (url.toString().equals("https://schema.org")) {
            return JsonDocument.of(new StringReader("{\"@context\": {\"@vocab\": \"" + VOCAB + "\"}}"));
        }
        throw new JsonLdError(JsonLdErrorCode.LOADING_REMOTE_CONTEXT_FAILED, "not on the web: " + url);
    }
}
