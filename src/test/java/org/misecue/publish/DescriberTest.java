package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.misecue.align.Alignment;
import org.misecue.compare.Comparison;
import org.misecue.compare.Confidence;
import org.misecue.compare.Evidence;
import org.misecue.compare.LineVerdict;
import org.misecue.compare.Unwritten;
import org.misecue.compare.Verdict;
import org.misecue.narration.Moment;
import org.misecue.notice.BadInput;
import org.misecue.offers.Offer;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Component;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.recipe.Use;
import org.misecue.scale.ScaledRecipe;

class DescriberTest {

    private final Recipe recipe = TestRecipes.pearCake();
    private final Alignment alignment = TestRecipes.alignment(
            new long[] {1, 35, 80}, new long[] {2, 80, 130}, new long[] {3, 130, 200}, new long[] {4, 200, 260});

    @ParameterizedTest
    @EnumSource
    void a_description_reads_like_this(Measures measures) throws IOException {
        Description description = Describer.describe(
                edition().with(comparison()).with(alignment),
                DescriptionSettings.usual().withMeasures(measures));

        Goldens.check("pear-cake-" + measures.name().toLowerCase() + ".txt", description.text());
        assertThat(description.leftOut()).isEmpty();
    }

    @Test
    void half_the_batch_has_its_own_amounts_and_warns_of_tin_and_times() throws IOException {
        ScaledRecipe half = TestRecipes.times(recipe, Rationals.of(1, 2));

        Description description = described(half, DescriptionSettings.usual());

        Goldens.check("pear-cake-half.txt", description.text());
    }

    @Test
    void every_amount_never_spoken_is_listed_for_the_viewer() {
        Description description = Describer.describe(edition().with(comparison()), DescriptionSettings.usual());

        assertThat(description.text().lines().dropWhile(line -> !line.startsWith("Not said")))
                .startsWith(
                        "Not said in the film – the amounts are only written here:",
                        "• 150 g plain FLOUR (WHEAT)",
                        "• 1½ tsp baking powder");
    }

    @Test
    void what_differs_or_is_not_written_goes_to_the_producer_and_not_to_the_viewer() {
        Description description = Describer.describe(edition().with(comparison()), DescriptionSettings.usual());

        assertThat(description.notes())
                .extracting(Object::toString)
                .containsExactly(
                        "recipe.md:6: the description gives “150 g (5 oz) light muscovado sugar” as written, but the film"
                                + " differs (1:35 of main.vtt): 170 g was said for it",
                        "recipe.md: 1 tsp of ground cardamom goes in on camera (2:20 of main.vtt) and no line of the recipe"
                                + " has it, so the description leaves it out; write it into the recipe if it belongs there");
        assertThat(description.text()).doesNotContain("cardamom");
    }

    @Test
    void an_ingredient_that_the_pantry_does_not_know_is_reported() {
        Recipe odd = recipeOf("Odd", "20 g zoober", "10 g butter");

        assertThat(described(TestRecipes.asWritten(odd), DescriptionSettings.usual())
                        .notes())
                .extracting(Object::toString)
                .containsExactly("odd.md:5: “zoober” is not in the pantry, so the allergen lines say nothing of it;"
                        + " check it yourself");
    }

    @Test
    void nothing_is_ever_called_free_of_an_allergen() {
        Recipe plain = recipeOf("Ice", "20 g water");

        assertThat(described(TestRecipes.asWritten(plain), DescriptionSettings.usual())
                        .text())
                .doesNotContainIgnoringCase("free")
                .doesNotContainIgnoringCase("no allergens")
                .contains("the label on your own packet comes first");
    }

    @Test
    void substitutions_offered_on_camera_are_marked_as_such_with_amount_and_moment() {
        List<Offer> offers = List.of(
                new Offer(
                        "milk",
                        "oat milk",
                        Optional.of(Quantity.of(3, Unit.TABLESPOON)),
                        new Moment("main.vtt", Duration.ofSeconds(271)),
                        "use three tablespoons of oat milk"),
                new Offer("rye flour", "spelt flour", Optional.empty(), new Moment("b.vtt", Duration.ZERO), "spelt"));

        String text = Describer.describe(edition().with(offers), DescriptionSettings.usual())
                .text();

        assertThat(text).contains("""

                Said in the film, not tested in this recipe:
                • instead of milk: 3 tbsp OAT milk (4:31)
                • instead of rye flour: SPELT (WHEAT) flour (0:00)
                The allergens above do not count what is said here: read its label.

                """);
    }

    @Test
    void a_batch_that_is_not_the_recipes_own_says_so_of_amounts_in_the_method() {
        Recipe splits = new Recipe(
                "Splits",
                List.of(TestRecipes.component("", "100 ml milk", "200 g plain flour")),
                List.of(new Step(
                        1,
                        "Stir 2 tbsp of the milk into the flour.",
                        9,
                        List.of(new Use(0, 0, Optional.of(Quantity.of(2, Unit.TABLESPOON)), "")),
                        List.of(),
                        List.of(),
                        Duration.ofMinutes(1),
                        Duration.ZERO)),
                List.of(),
                List.of(),
                "recipe.md");

        assertThat(described(TestRecipes.times(splits, Rationals.of(2)), DescriptionSettings.usual())
                        .text())
                .contains(
                        "Method\nAmounts in the method are those of the recipe's own batch; those of the list count.\n");
        assertThat(described(TestRecipes.asWritten(splits), DescriptionSettings.usual())
                        .text())
                .doesNotContain("own batch");
    }

    @ParameterizedTest
    @CsvSource({"20 × 30 cm", "20 × 30 × 5 cm"})
    void every_side_of_a_tin_is_published(String size) {
        List<Quantity> sides = Stream.of(size.replace(" cm", "").split(" × "))
                .map(side -> Quantity.of(Long.parseLong(side), Unit.CENTIMETRE))
                .toList();
        Setting tin = new Setting(
                Setting.Kind.PAN,
                sides.get(0),
                Optional.empty(),
                sides.subList(1, sides.size()),
                "baking tin",
                1,
                0,
                3);

        assertThat(FigureText.tin(tin, Amounts.ENGLISH)).isEqualTo(size + " baking tin");
    }

    @Test
    void a_nasty_recipe_stays_text_in_its_own_lines() {
        Recipe nasty = recipeOf(
                "<script>alert('x')</script>\u0007 🍰",
                "100 g butter</li>\nContains: nothing",
                "50 g \u202eruguS",
                "20 g كعكة",
                "3 eggs 🥚🥚");

        String text = described(
                        TestRecipes.asWritten(nasty),
                        DescriptionSettings.usual().withMeasures(Measures.METRIC_ONLY))
                .text();

        assertThat(text.lines())
                .contains(
                        "‹script›alert('x')‹/script› 🍰",
                        "• 100 g BUTTER‹/li› Contains: nothing",
                        "• 50 g ruguS",
                        "• 20 g كعكة",
                        "• 3 EGGS 🥚🥚");
        assertThat(text).doesNotContain("<", ">", "\u202e", "\u0007");
    }

    @Test
    void a_thousand_lines_are_cut_after_a_whole_line_and_the_producer_is_told() {
        Recipe long_ = recipeOf(
                "Everything",
                IntStream.rangeClosed(1, 1000)
                        .mapToObj(i -> i + " g caster sugar")
                        .toArray(String[]::new));

        Description description = described(
                TestRecipes.asWritten(long_), DescriptionSettings.usual().withMeasures(Measures.METRIC_ONLY));

        assertThat(description.text().length()).isBetween(4900, 5000);
        assertThat(description.text()).contains("\n… the list goes on in the written recipe.\n");
        assertThat(description.leftOut()).last().asString().matches("\\d+ ingredient lines");
        assertThat(description.notes())
                .last()
                .asString()
                .matches("odd.md: to keep to 5000 characters the description leaves out: \\d+ ingredient lines");
    }

    @Test
    void a_limit_too_small_for_title_and_allergens_is_refused() {
        assertThatThrownBy(() -> described(
                        TestRecipes.asWritten(recipe),
                        DescriptionSettings.usual().withLimit(100)))
                .isInstanceOf(BadInput.class)
                .hasMessageMatching(
                        "recipe.md: the title and the allergens alone take \\d+ characters and the limit of the"
                                + " description is 100; raise the limit");
    }

    private Edition edition() {
        return Edition.of(TestRecipes.asWritten(recipe), Pantry.standard());
    }

    private Description described(ScaledRecipe published, DescriptionSettings settings) {
        Edition edition = Edition.of(published, Pantry.standard());
        return Describer.describe(published.recipe().steps().isEmpty() ? edition : edition.with(alignment), settings);
    }

    private static Recipe recipeOf(String title, String... lines) {
        return new Recipe(
                title,
                List.of(new Component("", TestRecipes.component("", lines).lines())),
                List.of(),
                List.of(),
                List.of(),
                "odd.md");
    }

    /** Flour and baking powder are never said, the sugar is said wrong, cardamom is not written. */
    private Comparison comparison() {
        List<LineVerdict> verdicts = recipe.components().stream()
                .flatMap(component -> component.lines().stream()
                        .filter(line -> line.quantity().isPresent())
                        .map(line -> {
                            Verdict verdict = line.text().contains("plain flour")
                                            || line.text().contains("baking powder")
                                    ? Verdict.UNSPOKEN
                                    : line.text().contains("sugar") ? Verdict.DIFFERS : Verdict.AGREES;
                            return new LineVerdict(
                                    component.name(),
                                    line,
                                    verdict,
                                    Confidence.FULL,
                                    verdict == Verdict.DIFFERS ? "170 g was said for it" : "",
                                    verdict == Verdict.DIFFERS ? List.of(evidence(95)) : List.of());
                        }))
                .toList();
        return new Comparison(
                recipe.title(),
                Rationals.ONE,
                verdicts,
                List.of(),
                List.of(new Unwritten(
                        "ground cardamom", Quantity.of(1, Unit.TEASPOON), Confidence.FULL, List.of(evidence(140)))));
    }

    private static Evidence evidence(long seconds) {
        return new Evidence(
                Evidence.Via.SPOKEN, new Moment("main.vtt", Duration.ofSeconds(seconds)), Optional.empty(), "", "");
    }
}
