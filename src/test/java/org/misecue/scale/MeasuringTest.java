package org.misecue.scale;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.CupsAndSpoons;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;

class MeasuringTest {

    private static String in(Measuring system, Recipe recipe, Household own) {
        ScaleRules rules = ScaleRules.standard().with(own);
        ScaledRecipe scaled = Scaler.scale(recipe, Batch.WRITTEN, rules, Pantry.standard());
        ScaledSheet.Column column = system.write(scaled, rules, Pantry.standard());
        return column.scaled().lines().stream()
                .map(line -> CupsAndSpoons.text(line.weighed().orElseThrow(), column.household()))
                .collect(Collectors.joining("; "));
    }

    /**
     * Sources: exact pound, ounce and US fluid ounce; US cups weigh 125 g of plain flour, 200 g of sugar, 227 g of butter
     * (USDA SR26 20081, 19335, 01145); an imperial pint is 568.26 ml and its fluid ounce 28.41 ml.
     */
    @ParameterizedTest(name = "{0} is {1}, {2}, {3}")
    @CsvSource({
        "250 g plain flour,      250 g,          about 2 cups,      8¾ oz",
        "200 g caster sugar,     200 g,          about 1 cup,       7 oz",
        "113 g unsalted butter,  113 g,          about ½ cup,       4 oz",
        "1 kg unknown thing,     1 kg,           2 lb 3½ oz,        2 lb 3½ oz",
        "480 ml whole milk,      480 ml,         about 2 cups,      17 fl oz",
        "2 cup plain flour,      about 250 g,    2 cups,            8¾ oz",
        "1 cup whole milk,       237 ml,         1 cup,             8¼ fl oz",
        "8 oz plain flour,       227 g,          8 oz,              8 oz",
        "1 lb caster sugar,      454 g,          1 lb,              1 lb",
        "1 stick unsalted butter, 113 g,         1 stick,           4 oz",
        "2 tsp baking powder,    2 tsp,          2 tsp,             2 tsp",
        "3 each eggs,            3,              3,                 3",
    })
    void every_amount_can_be_had_in_each_system(String line, String metric, String us, String imperial) {
        Recipe recipe = Recipes.of(Recipes.lines(line));
        assertThat(in(Measuring.METRIC, recipe, Household.US_CUSTOMARY)).isEqualTo(metric);
        assertThat(in(Measuring.US, recipe, Household.US_CUSTOMARY)).isEqualTo(us);
        assertThat(in(Measuring.IMPERIAL, recipe, Household.US_CUSTOMARY).replace("about ", ""))
                .isEqualTo(imperial);
    }

    @Test
    void a_cup_weighs_by_the_size_of_the_kitchens_own() {
        Recipe recipe = Recipes.of(Recipes.lines("1 cup plain flour"));
        assertThat(in(Measuring.METRIC, recipe, Household.US_CUSTOMARY)).isEqualTo("about 125 g");
        assertThat(in(Measuring.METRIC, recipe, Household.METRIC)).isEqualTo("about 132 g");
    }

    @Test
    void what_the_recipe_writes_beside_an_amount_counts_before_the_pantry() {
        IngredientLine flour = new IngredientLine(
                "3 cups (400 g) plain flour",
                10,
                Optional.of(Quantity.of(3, Unit.CUP)),
                Optional.of(Quantity.of(400, Unit.GRAM)),
                "",
                "plain flour",
                "",
                false,
                List.of());
        assertThat(in(Measuring.METRIC, Recipes.of(List.of(flour)), Household.US_CUSTOMARY))
                .isEqualTo("400 g");
    }

    /** A gram is read off to the gram, an ounce to a quarter: neither way may lose more than its own step. */
    @Property(tries = 300)
    void grams_and_ounces_stay_within_their_steps(@ForAll @IntRange(min = 1, max = 5000) int grams) {
        Recipe recipe = Recipes.of(Recipes.lines(grams + " g nameless powder"));
        ScaleRules rules = ScaleRules.standard();
        ScaledRecipe scaled = Scaler.scale(recipe, Batch.WRITTEN, rules, Pantry.standard());
        Quantity ounces = Measuring.IMPERIAL
                .write(scaled, rules, Pantry.standard())
                .scaled()
                .lines()
                .get(0)
                .weighed()
                .orElseThrow();
        double off = ounces.leastInBase(Household.METRIC).orElseThrow().doubleValue() - grams;
        double step = grams < 114 ? 0.125 : grams < 907 ? 0.25 : 0.5;
        assertThat(Math.abs(off)).isLessThanOrEqualTo(step * 28.349523125 * (grams < 4 ? 1 : 0.5) + 1e-9);
    }

    @Test
    void spoons_are_told_from_the_language_and_else_from_the_list() {
        Recipe american = Recipes.of(Recipes.lines("2 cup plain flour", "1 stick butter"));
        Recipe mixed = Recipes.of(Recipes.lines("1 cup milk", "200 g plain flour"));
        assertThat(Spoons.of(american, Locale.UK)).isEqualTo(Household.US_CUSTOMARY);
        assertThat(Spoons.of(mixed, Locale.UK)).isEqualTo(Household.METRIC);
        assertThat(Spoons.of(mixed, Locale.US)).isEqualTo(Household.US_CUSTOMARY);
        assertThat(Spoons.of(american, Locale.forLanguageTag("en-AU"))).isEqualTo(Household.AUSTRALIAN);
        assertThat(Spoons.of(mixed, Locale.forLanguageTag("en-NZ"))).isEqualTo(Household.METRIC);
    }
}
