package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.compare.Journey.Stop;
import org.misecue.narration.Narration;
import org.misecue.narration.Word;
import org.misecue.notice.BadInput;
import org.misecue.pantry.Pantry;
import org.misecue.prep.Golden;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Speech;

class JourneyTest {

    private static final String FLAN = recipe("180 g ground almonds; 120 g golden syrup; 60 g unsalted butter");

    private static final String SPOKEN =
            "hello so ground almonds first they were four pounds fifty and I take a hundred"
                    + " and eighty grams of the almonds | then golden syrup it's a hundred and fifty grams no sorry a hundred"
                    + " and twenty grams of the syrup | and half as much butter as that so just let it melt";

    @TempDir
    Path folder;

    private static String recipe(String lines) {
        return "# Almond flan\n\n## Ingredients\n\n- " + String.join("\n- ", lines.split("; "))
                + "\n\n## Method\n\n1. Mix it all and bake at 180 °C for 30 minutes.\n";
    }

    private Recipe read(String markdown) throws IOException {
        return RecipeReader.read(Files.writeString(folder.resolve("recipe.md"), markdown), "recipe.md");
    }

    private List<Journey> explain(String markdown, String said, String words) throws IOException {
        return Comparer.explain(
                read(markdown), List.of(Speech.narration(said)), Pantry.standard(), Optional.empty(), words);
    }

    @Test
    void an_aside_a_correction_and_a_back_reference_are_told_in_plain_words() throws IOException {
        List<Journey> journeys = new ArrayList<>();
        for (String words : List.of("almonds", "golden syrup", "butter")) {
            journeys.addAll(explain(FLAN, SPOKEN, words));
        }
        Golden.check(JourneyTest.class, "journeys.txt", JourneyText.of(journeys));
    }

    /** Each row: what is said of the lines, the words asked for, and what the journey must tell. */
    @ParameterizedTest(name = "{3}")
    @CsvSource(
            delimiter = '/',
            quoteCharacter = '~',
            value = {
                "60 g honey / about sixty grams of honey / honey / The speaker hedges, so that nothing agrees",
                "60 g honey / ninety grams of honey / honey / 90 g is held against the written 60 g, 50 % more: it differs.",
                "60 g honey / honey and that's sixty / honey / only the number being said",
                "60 g honey / honey sixty grams and here it goes honey eighty grams / honey / contradicts 60 g and takes nothing"
                        + " back: now 60 g and 80 g stand",
                "80 g oats / forty grams of oats now and then another forty grams of oats / oats / adds to 40 g: now 80 g stands",
                "80 g oats / eighty grams of oats yes eighty grams of oats / oats / says it again: 80 g stays",
                "80 g oats / oats my gran used to put two hundred grams in / oats / put aside, because this is",
                "80 g oats; 80 g honey / eighty grams each of oats and honey / oats / shared with honey",
                "80 g oats; 90 g honey / eighty grams of oats and ninety grams of honey / oats / given to honey, named by “honey”"
                        + " 2 words after it",
                "80 g oats / a packet of oats is eighty grams and the whole packet goes in / oats / Heard as 80 g, because it is the"
                        + " size of a pack that goes in whole",
                "2 eggs / crack two eggs and they weigh a hundred and ten grams / eggs / this is what the eggs weighed, which are"
                        + " counted",
                "80 g oats / we fold in the oats / oats / no amount was given to it",
                "salt to taste / some salt / salt / The line states no amount",
                "80 g oats / bake it for thirty minutes / bake / Heard as 30 minutes; it stands.",
                "80 g oats / the oven is at a hundred and eighty degrees / oven / Heard as 180 °C; it stands.",
                "100 g oats; 200 g honey / I'm making a double batch so two hundred grams of oats and four hundred grams of honey"
                        + " / oats / counted as 100 g for the written batch",
            })
    void tells(String lines, String said, String words, String told) throws IOException {
        assertThat(unwrapped(JourneyText.of(explain(recipe(lines), said, words))))
                .contains(told);
    }

    private static String unwrapped(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void words_that_mean_nothing_written_are_refused_with_the_nearest_names() {
        assertThatThrownBy(() -> explain(FLAN, SPOKEN, "goldn sirup"))
                .isInstanceOf(BadInput.class)
                .hasMessage(
                        "recipe.md: no ingredient and no setting is called “goldn sirup”; the nearest are “golden syrup”,"
                                + " “ground almonds”, “unsalted butter”.");
        assertThatThrownBy(() -> explain(FLAN, SPOKEN, " ")).isInstanceOf(BadInput.class);
    }

    @Test
    void the_component_tells_equal_names_apart() throws IOException {
        String parts = "# Bars\n\n## Ingredients\n\n### Base\n\n- 100 g butter\n\n### Topping\n\n- 50 g butter\n\n"
                + "## Method\n\n1. Mix the base.\n";
        assertThat(explain(parts, "hello there", "butter")).hasSize(2);
        assertThat(explain(parts, "hello there", "topping butter"))
                .extracting(Journey::what)
                .containsExactly("50 g butter");
    }

    @Test
    void the_json_has_every_journey_with_its_stops() throws IOException {
        JsonNode json = new ObjectMapper().readTree(JourneyJson.of(explain(FLAN, SPOKEN, "syrup")));
        assertThat(json.fieldNames()).toIterable().containsExactly("scale", "journeys", "heardOtherwise");
        JsonNode syrup = json.at("/journeys/0");
        assertThat(syrup.fieldNames())
                .toIterable()
                .containsExactly("what", "where", "verdict", "confidence", "stops", "outcome", "nearBy");
        assertThat(syrup.get("verdict").asText()).isEqualTo("agrees");
        assertThat(syrup.at("/stops/1/amount").asInt()).isEqualTo(120);
        assertThat(syrup.at("/stops/1").fieldNames())
                .toIterable()
                .containsExactly("via", "source", "at", "amount", "unit", "quote", "sentence");
    }

    @Test
    void the_text_fits_eighty_columns() throws IOException {
        assertThat(JourneyText.of(explain(FLAN, SPOKEN, "almonds")).lines()).allMatch(line -> line.length() <= 80);
    }

    /** Over every sentence of the tables: explaining changes no verdict and every stop is something that was said. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("org.misecue.compare.SentencesTest#cases")
    void every_stop_lies_within_the_narration(SentencesTest.Case one) throws IOException {
        Recipe recipe = read(one.markdown());
        Narration narration = Speech.narration(one.said());
        Comparison comparison = Comparer.compare(recipe, List.of(narration), Pantry.standard());
        SoftAssertions softly = new SoftAssertions();
        for (LineVerdict verdict : comparison.written()) {
            List<Journey> journeys = Comparer.explain(
                    recipe,
                    List.of(narration),
                    Pantry.standard(),
                    Optional.empty(),
                    verdict.line().ingredient());
            softly.assertThat(journeys)
                    .filteredOn(journey -> journey.what().equals(verdict.line().text()))
                    .extracting(Journey::verdict)
                    .contains(Optional.of(verdict.verdict()));
            journeys.forEach(journey -> within(softly, journey, narration));
        }
        softly.assertAll();
    }

    private static void within(SoftAssertions softly, Journey journey, Narration narration) {
        String whole = narration.cues().stream()
                .flatMap(cue -> cue.words().stream())
                .map(Word::text)
                .filter(word -> !word.equals(">>")) // a turn of another speaker is quoted without its mark
                .collect(Collectors.joining(" "));
        Stream.concat(journey.stops().stream(), journey.nearBy().stream())
                .map(Stop::evidence)
                .forEach(heard -> {
                    softly.assertThat(whole).contains(heard.quote());
                    softly.assertThat(heard.quote()).contains(heard.deciding());
                    softly.assertThat(heard.moment().at())
                            .isBetween(
                                    narration.cues().get(0).start(),
                                    narration
                                            .cues()
                                            .get(narration.cues().size() - 1)
                                            .end());
                });
    }
}
