package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whole recipes beside the text that people see of them; a change of understanding shows as a change of that text. */
class WholeRecipesTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pear-cake.txt",
                "ginger-biscuits.txt",
                "two-part-roll.md",
                "odd-lines.md",
                "plum-slice.html",
                "bare-headings.txt",
                "quoted-mail.txt",
                "oat-bars.html",
                "shared-words.md",
                "broken-amounts.md"
            })
    void a_recipe_is_understood_as_its_golden_text_says(String name) throws IOException, URISyntaxException {
        Path golden = file(name).resolveSibling(name + ".golden");
        assertThat(RecipeText.of(read(name))).isEqualTo(Files.readString(golden));
    }

    @Test
    void the_json_document_keeps_its_contract() throws IOException, URISyntaxException {
        JsonNode json = new ObjectMapper().readTree(RecipeJson.of(read("pear-cake.txt")));
        assertThat(json.path("title").asText()).isEqualTo("Pear and almond cake");
        assertThat(json.path("yield").toString())
                .isEqualTo("{\"amount\":8,\"amountMax\":10,\"unit\":\"each\",\"what\":\"servings\"}");
        JsonNode butter = json.at("/components/0/lines/0");
        assertThat(butter.path("text").asText()).isEqualTo("200g/7oz butter, softened");
        assertThat(butter.path("amount").asInt()).isEqualTo(200);
        assertThat(butter.path("amountMax").isNull()).isTrue();
        assertThat(butter.path("unit").asText()).isEqualTo("g");
        assertThat(butter.path("ingredient").asText()).isEqualTo("butter");
        assertThat(butter.path("preparation").asText()).isEqualTo("softened");
        assertThat(butter.path("optional").asBoolean()).isFalse();
        assertThat(json.at("/components/0/lines/7/alternatives/0").asText()).isEqualTo("cream");
        assertThat(json.at("/components/0/lines/9/optional").asBoolean()).isTrue();
        assertThat(json.at("/components/0/lines/9/amount").isNull()).isTrue();
        assertThat(json.at("/components/1/lines/0/unit").isNull()).isTrue();
        assertThat(json.at("/steps/0/settings/0/fan/amount").asInt()).isEqualTo(160);
        assertThat(json.at("/steps/1/uses/0/ingredient").asText()).isEqualTo("butter");
        assertThat(json.path("notes").isArray()).isTrue();
    }

    @Test
    void notes_name_the_line() throws IOException, URISyntaxException {
        JsonNode notes =
                new ObjectMapper().readTree(RecipeJson.of(read("odd-lines.md"))).path("notes");
        assertThat(notes.get(0).toString())
                .isEqualTo("{\"line\":5,\"note\":\"the amount in \\\"0 g sugar\\\" cannot be right and is not used;"
                        + " write it as 225 g or 1½ tsp.\"}");
        assertThat(notes).hasSize(7);
    }

    private static Recipe read(String name) throws URISyntaxException {
        return RecipeReader.read(file(name), name);
    }

    private static Path file(String name) throws URISyntaxException {
        return Path.of(Objects.requireNonNull(WholeRecipesTest.class.getResource("whole/" + name))
                .toURI());
    }
}
