package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A recipe at other sizes and in other measures, as people read it: the golden texts lie beside the recipe. */
class ReadAtSizesTest {

    private static final Path SIZES = Path.of("src/test/resources/org/misecue/cli/sizes");

    @TempDir
    private Path temp;

    private OnStage stage;

    @BeforeEach
    void putTheRecipeOut() throws IOException {
        stage = new OnStage(temp);
        stage.write("cake.md", resource("pear-cake.md"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "deeper-tin      | --tin=20 cm round, 10 cm deep",
                "four-times      | --times=4 --takes=2 --spare=1",
                "in-both         | --in=both",
                "in-imperial     | --times=2 --in=imperial",
                "in-us           | --in=us --takes=3",
                "butter-left     | --have=310 g butter",
                "eighteen        | --makes=18",
                "loaf            | --tin=2 lb loaf",
                "australian      | --spoons=australia --times=¼",
            })
    void reads_like_its_golden_text(String name, String options) throws IOException {
        String[] each = options.split(" (?=--)", -1);
        String[] args = new String[each.length + 2];
        args[0] = "read";
        args[1] = "cake.md";
        System.arraycopy(each, 0, args, 2, each.length);
        OnStage.Ran ran = stage.run(args);
        assertThat(ran.exit()).isZero();
        Path golden = SIZES.resolve(name + ".golden");
        assertThat(ran.out()).isEqualTo(Files.readString(golden));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--times=1", "--makes=12", "--tin=20 cm round, 5 cm deep", "--have=225 g butter"})
    void the_written_batch_changes_no_byte(String option) {
        assertThat(stage.run("read", "cake.md", option).out())
                .isEqualTo(stage.run("read", "cake.md", "--spoons=metric").out())
                .doesNotContain("exactly", "Notes");
        assertThat(stage.run("read", "cake.md", option, "--json").out())
                .isEqualTo(stage.run("read", "cake.md", "--spoons=metric", "--json")
                        .out());
    }

    @Test
    void the_written_batch_of_an_episode_changes_no_byte_of_its_sheets() {
        for (String batch : new String[] {"times: 1", "makes: 12", "tin: 20 cm round, 5 cm deep"}) {
            stage.write("plain/recipe.md", resource("pear-cake.md"));
            stage.write("scaled/recipe.md", resource("pear-cake.md"));
            stage.write("scaled/episode.yaml", "batch:\n  " + batch + "\n");
            for (String command : new String[] {"prep", "shots", "describe"}) {
                assertThat(stage.run(command, "scaled", "--json").out())
                        .as(command + " with " + batch)
                        .isEqualTo(stage.run(command, "plain", "--json").out());
            }
        }
    }

    @Test
    void json_says_what_is_furthest_off_and_what_all_sets_take() throws IOException {
        String out = stage.run("read", "cake.md", "--times=1.3", "--takes=2", "--spare=1", "--in=both", "--json")
                .out();
        JsonNode scaled = new ObjectMapper().readTree(out).get("scaled");
        assertThat(scaled.get("takes").asInt()).isEqualTo(2);
        assertThat(scaled.get("spare").asInt()).isEqualTo(1);
        assertThat(scaled.get("furthestOff").get("ingredient").asText()).isEqualTo("medium eggs");
        assertThat(scaled.get("furthestOff").get("error").asDouble())
                .as("5.2 eggs, rounded to 5")
                .isCloseTo(-0.2 / 5.2, within(1e-9));
        JsonNode butter = scaled.get("lines").get(0);
        assertThat(butter.get("exact").asDouble()).isEqualTo(292.5);
        assertThat(butter.get("amount").asInt()).isEqualTo(293);
        assertThat(butter.get("inAll").asInt()).isEqualTo(879);
        assertThat(butter.get("beside").get("unit").asText()).isEqualTo("cup");
    }

    @Test
    void an_episode_weighs_by_its_own_kitchen() {
        stage.write("fine/recipe.md", resource("pear-cake.md"));
        stage.write("fine/episode.yaml", "language: en-AU\nkitchen:\n  scale: 0.1 g\n  mixer: 20 l\n");
        String out = stage.run("read", "fine", "--times=1.3").out();
        assertThat(out).contains("292.5 g  unsalted butter", "tbsp 20 ml").doesNotContain("exactly 292.5");
        assertThat(stage.run("read", "fine", "--times=15").out()).contains("more than half of the mixer's 20 litres");
    }

    @Test
    void the_persons_own_pantry_is_known_on_the_list_and_to_the_checks() {
        String recipe = """
                # Glimmer bun

                Makes 1

                ## Ingredients
                - 100 g plain flour
                - 1 cup (200 g) glimmer paste

                ## Method
                1. Mix the flour with the shiny stuff.
                """;
        stage.write("bun/recipe.md", recipe);
        assertThat(stage.run("read", "bun").out()).contains("glimmer paste\" is listed but the method never uses it");
        stage.write(
                "bun/pantry.yaml",
                "- name: glimmer paste\n  also: [shiny stuff]\n  aisle: baking\n  kind: syrup\n  grams: {cup: 340}\n");
        for (String named : new String[] {"bun", "bun/recipe.md"}) {
            assertThat(stage.run("read", named).out())
                    .contains("1 cup and 200 g of glimmer paste differ by more than a tenth")
                    .doesNotContain("never uses it");
        }
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "--times=99999     | misecue: --times: a batch is from 0.01 to 100 times the recipe, such as 2 or 0.5, not “99999”.",
                "--times=-1        | misecue: --times: a batch is from 0.01 to 100 times the recipe, such as 2 or 0.5, not “-1”.",
                "--times=½½        | misecue: --times: a batch is from 0.01 to 100 times the recipe, such as 2 or 0.5, not “½½”.",
                "--makes=18 kg     | misecue: cake.md:3: the recipe makes 12 servings, and a batch of 18 kg is measured otherwise; give it as the recipe does, or scale by times.",
                "--tin=wide        | misecue: --tin: a tin is a size and a shape, such as 20 cm round, 33 × 23 cm, 2 lb loaf or 12-hole muffin, not “wide”.",
                "--have=some sugar | misecue: --have: what is left is an amount and a name, such as 310 g butter, not “some sugar”.",
                "--takes=0         | misecue: --takes: takes go from 1 to 20, not 0.",
                "--spare=21        | misecue: --spare: spare sets go from 0 to 20, not 21.",
                "--in=furlongs     | misecue: --in: measures are metric, us, imperial or both, not “furlongs”.",
                "--spoons=soup     | misecue: --spoons: spoons are metric, us, us-label, uk or australia, not “soup”.",
            })
    void bad_sizes_are_told_in_one_sentence(String option, String sentence) {
        OnStage.Ran ran = stage.run("read", "cake.md", option, "--quiet");
        assertThat(ran.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err().strip()).isEqualTo(sentence);
    }

    private static String resource(String name) {
        try (InputStream in = ReadAtSizesTest.class.getResourceAsStream("sizes/" + name)) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
