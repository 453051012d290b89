package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Types, properties and kinds of value: schema-dts 2.1.0, as {@code vocabulary.csv} has them. */
class SchemaOrgVocabularyTest {

    private static final Vocabulary VOCABULARY = Vocabulary.read();

    static List<Path> recipes() {
        return TestEditions.recipes();
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void what_is_known_of_a_recipe_alone_is_valid(Path recipe) throws IOException {
        assertThat(VOCABULARY.faults(parsed(TestEditions.of(recipe)))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void with_all_that_can_be_known_it_is_valid_too(Path recipe) throws IOException {
        assertThat(VOCABULARY.faults(parsed(TestEditions.of(recipe).with(TestEditions.everywhere()))))
                .isEmpty();
    }

    @Test
    void film_and_chapters_are_valid() throws IOException {
        JsonNode json = parsed(TestEditions.pearCake());

        assertThat(VOCABULARY.faults(json)).isEmpty();
        assertThat(json.at("/video/@type").asText()).isEqualTo("VideoObject");
        assertThat(json.at("/video/hasPart")).hasSize(5);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    {"@type": "Recipe", "cookTime": "45 minutes"}               | /cookTime: takes [Duration], not "45 minutes"
                    {"@type": "Recipe", "cookTime": "PT"}                       | /cookTime: takes [Duration], not "PT"
                    {"@type": "Recipe", "ingredients": "1 egg"}                 | /ingredients: deprecated
                    {"@type": "Recipe", "oven": "180 °C"}                       | /oven: no property of Recipe
                    {"@type": "Recipe", "author": "Somebody"}                   | /author: takes [Organization, Person], not "Somebody"
                    {"@type": "Recipe", "datePublished": "18 May"}              | /datePublished: takes [Date, DateTime], not "18 May"
                    {"@type": "Recipe", "video": {"@type": "HowToTool"}}        | /video: takes [Clip, VideoObject], not a HowToTool
                    {"@type": "VideoObject", "contentUrl": "film.mp4"}          | /contentUrl: takes [URL], not "film.mp4"
                    {"@type": "Clip", "startOffset": "1:20"}                    | /startOffset: takes [HyperTocEntry, Number], not "1:20"
                    {"@type": "Cake"}                                           | : no type Cake
                    """)
    void the_check_itself_finds_what_is_wrong(String json, String fault) throws IOException {
        assertThat(VOCABULARY.faults(new ObjectMapper().readTree(json))).containsExactly(fault);
    }

    @Test
    void what_nobody_has_said_is_nowhere() throws IOException {
        JsonNode json = parsed(TestEditions.of(Path.of("sample-project/recipe.md")));

        assertThat(json.fieldNames())
                .toIterable()
                .containsExactly(
                        "@context",
                        "@type",
                        "name",
                        "inLanguage",
                        "recipeYield",
                        "prepTime",
                        "cookTime",
                        "totalTime",
                        "tool",
                        "recipeIngredient",
                        "recipeInstructions");
    }

    @Test
    void a_chapter_ends_where_the_next_begins_and_the_last_with_the_film() throws IOException {
        JsonNode clips = parsed(TestEditions.pearCake()).at("/video/hasPart");

        assertThat(StreamSupport.stream(clips.spliterator(), false)
                        .map(clip -> clip.get("startOffset") + "–" + clip.get("endOffset")))
                .containsExactly("0–35", "35–80", "80–130", "130–200", "200–275");
        assertThat(clips.at("/1/url").asText()).isEqualTo("https://example.org/films/pear-cake.mp4?cut=2&hd#t=35,80");
    }

    @Test
    void where_the_length_of_the_film_is_not_known_the_last_chapter_has_no_end() throws IOException {
        JsonNode json =
                parsed(TestEditions.pearCake().with(TestEditions.everywhere().withLength(java.util.Optional.empty())));

        assertThat(json.at("/video/duration").isMissingNode()).isTrue();
        assertThat(json.at("/video/hasPart/4/endOffset").isMissingNode()).isTrue();
        assertThat(json.at("/video/hasPart/3/endOffset").asInt()).isEqualTo(200);
    }

    @Test
    void steps_stand_under_the_parts_of_the_dish_where_each_takes_up_one_part() throws IOException {
        JsonNode instructions = parsed(
                        TestEditions.of(Path.of("sample-project/recipe.md")).with(TestEditions.everywhere()))
                .get("recipeInstructions");

        assertThat(StreamSupport.stream(instructions.spliterator(), false)
                        .map(section -> section.get("@type").asText()
                                + " "
                                + section.get("name").asText()
                                + ": "
                                + section.get("itemListElement").findValuesAsText("position")))
                .containsExactly(
                        "HowToSection For the roasted plums: [1]",
                        "HowToSection For the cake: [2, 3, 4, 5, 6, 7, 8]",
                        "HowToSection For the tahini cream: [9]");
        assertThat(instructions.at("/1/itemListElement/0/url").asText())
                .isEqualTo("https://example.org/pear-cake#step-2");
    }

    private static JsonNode parsed(Edition edition) throws IOException {
        return new ObjectMapper().readTree(SchemaOrg.json(edition));
    }
}
