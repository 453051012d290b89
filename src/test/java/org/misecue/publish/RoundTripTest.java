package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.quantity.MeasureSystem;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Component;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.recipe.Step;
import org.misecue.scale.Batch;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.WeighedLine;

/** What viewers get is the recipe: read back by our own reader, the published text gives the same one. */
class RoundTripTest {

    @TempDir
    private Path folder;

    static Stream<Arguments> recipes() {
        List<Arguments> all = new ArrayList<>();
        for (Path recipe : TestEditions.recipes()) {
            for (Measures measures : List.of(Measures.METRIC_FIRST, Measures.HOUSEHOLD_FIRST)) {
                for (Emphasis emphasis : Emphasis.values()) {
                    all.add(Arguments.of(recipe, measures, emphasis));
                }
            }
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void the_published_text_reads_as_the_recipe(Path written, Measures measures, Emphasis emphasis) throws IOException {
        Edition edition = TestEditions.of(written);

        Recipe read = published(edition, measures, emphasis);

        assertThat(read.lines()).isNotEmpty();
        assertThat(read.title()).isEqualTo(SafeText.line(edition.recipe().title()));
        assertThat(read.steps().stream().map(Step::text))
                .containsExactlyElementsOf(edition.recipe().steps().stream()
                        .map(step -> SafeText.line(step.text()))
                        .toList());
        assertSameLists(read, edition.batch(), measures);
    }

    @ParameterizedTest
    @MethodSource("recipes")
    void the_text_of_two_batches_reads_as_two_batches(Path written, Measures measures, Emphasis emphasis)
            throws IOException {
        ScaledRecipe two = TestEditions.scaled(written, new Batch.Factor(Rationals.of(2)));

        assertSameLists(published(Edition.of(two, Pantry.standard()), measures, emphasis), two, measures);
    }

    /** Any list of lines: of what the pantry knows and of what it does not, in parts or not. */
    @Property(tries = 150)
    void any_list_reads_as_it_was_written(
            @ForAll("lists") String list, @ForAll Measures measures, @ForAll Emphasis emphasis) throws IOException {
        Path folder = Files.createTempDirectory("round-trip");
        try {
            Path written = Files.writeString(folder.resolve("recipe.md"), list);
            ScaledRecipe batch = TestEditions.scaled(written, Batch.WRITTEN);

            Recipe read = read(text(Edition.of(batch, Pantry.standard()), measures, emphasis), folder);

            assertSameLists(read, batch, measures);
        } finally {
            Files.deleteIfExists(folder.resolve("recipe.txt"));
            Files.deleteIfExists(folder.resolve("recipe.md"));
            Files.deleteIfExists(folder);
        }
    }

    @Provide
    Arbitrary<String> lists() {
        Arbitrary<String> amounts = Arbitraries.of(
                "175 g",
                "1.2 kg",
                "87.5 g",
                "300 ml",
                "1½ tsp",
                "¼ tsp",
                "2–3 tbsp",
                "3",
                "6",
                "1 cup",
                "2¼ cups",
                "a pinch of",
                "5 oz",
                "1 lb",
                "about 40 g");
        Arbitrary<String> names = Arbitraries.of(
                "unsalted butter",
                "plain flour",
                "caster sugar",
                "buttermilk",
                "ground almonds",
                "dark chocolate",
                "tahini",
                "soya milk",
                "marzipan",
                "zoober root",
                "vanilla extract",
                "double cream");
        Arbitrary<String> done = Arbitraries.of("", ", softened", ", sifted", ", roughly chopped", ", cold");
        Arbitrary<String> line = Combinators.combine(amounts, names, done)
                .as((amount, name, after) -> "- " + amount + " " + name + after + "\n");
        Arbitrary<String> lines = line.list().ofMinSize(1).ofMaxSize(6).map(all -> String.join("", all));
        Arbitrary<String> parts = lines.list().ofMinSize(1).ofMaxSize(3).map(all -> {
            List<String> headings = List.of("For the base", "For the filling", "For the glaze");
            StringBuilder text = new StringBuilder();
            for (int at = 0; at < all.size(); at++) {
                text.append("\n### ").append(headings.get(at)).append("\n\n").append(all.get(at));
            }
            return text.toString();
        });
        return Arbitraries.oneOf(lines, parts)
                .map(list -> "# Any slice\n\n## Ingredients\n" + list + "\n## Method\n\n1. Mix everything well.\n");
    }

    private static void assertSameLists(Recipe read, ScaledRecipe batch, Measures measures) {
        Recipe recipe = batch.recipe();
        assertThat(read.components().stream().map(RoundTripTest::lowerName))
                .containsExactlyElementsOf(recipe.components().stream()
                        .map(RoundTripTest::lowerName)
                        .toList());
        assertThat(read.lines()).hasSameSizeAs(batch.lines());
        SoftAssertions softly = new SoftAssertions();
        for (int at = 0; at < batch.lines().size(); at++) {
            sameLine(softly, read.lines().get(at), batch.lines().get(at), measures);
        }
        softly.assertAll();
    }

    private static void sameLine(SoftAssertions softly, IngredientLine read, WeighedLine weighed, Measures measures) {
        IngredientLine written = weighed.written();
        String as = written.text() + " → " + read.text();
        MeasureSystem own =
                weighed.weighed().map(quantity -> quantity.unit().system()).orElse(MeasureSystem.SHARED);
        boolean metricFirst = measures.only() == Measures.METRIC_ONLY;
        boolean alone = measures == measures.only() || read.alternative().isEmpty();
        boolean first = own == MeasureSystem.SHARED || (own == MeasureSystem.METRIC) == metricFirst;
        if (first || !alone) {
            softly.assertThat((first ? read.quantity() : read.alternative()).map(RoundTripTest::inGrams))
                    .as(as)
                    .isEqualTo(weighed.weighed().map(RoundTripTest::inGrams));
        }
        softly.assertThat(name(read)).as(as).isEqualTo(name(written));
        softly.assertThat(read.optional()).as(as).isEqualTo(written.optional());
    }

    /** A kilogram is a thousand grams, and a litre as many millilitres. */
    private static Quantity inGrams(Quantity quantity) {
        return switch (quantity.unit()) {
            case KILOGRAM -> quantity.in(Unit.GRAM, Household.METRIC);
            case LITRE -> quantity.in(Unit.MILLILITRE, Household.METRIC);
            default -> quantity;
        };
    }

    private static String name(IngredientLine line) {
        return line.ingredient().toLowerCase(Locale.ROOT);
    }

    private static String lowerName(Component component) {
        return component.name().toLowerCase(Locale.ROOT);
    }

    private Recipe published(Edition edition, Measures measures, Emphasis emphasis) throws IOException {
        return read(text(edition, measures, emphasis), folder);
    }

    /** As a viewer copies it: a box that knows the stars shows bold words instead. */
    private static String text(Edition edition, Measures measures, Emphasis emphasis) {
        String text = Describer.describe(
                        edition,
                        DescriptionSettings.usual()
                                .withMeasures(measures)
                                .withEmphasis(emphasis)
                                .withLimit(100_000))
                .text();
        return emphasis == Emphasis.STARS ? text.replaceAll("\\*([^*\n]+)\\*", "$1") : text;
    }

    private static Recipe read(String text, Path folder) throws IOException {
        return RecipeReader.read(Files.writeString(folder.resolve("recipe.txt"), text), "recipe.txt");
    }
}
