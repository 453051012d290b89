package org.misecue.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;

class ScalerTest {

    private static final Setting MAKES_12 = Recipes.setting(Setting.Kind.YIELD, Quantity.of(12, Unit.EACH), "buns", 1);

    private static ScaledRecipe scaled(Recipe recipe, Batch batch) {
        return Scaler.scale(recipe, batch, ScaleRules.standard(), Pantry.standard());
    }

    private static Batch times(String factor) {
        return new Batch.Factor(Rationals.of(factor));
    }

    @ParameterizedTest(name = "{0} × {1} is {2}, {3} g")
    @CsvSource({
        "225 g caster sugar,        2.5,  563 g,     563",
        "0.75 tsp baking powder,    1.5,  1⅛ tsp,    5.25",
        "2 each large eggs,         1.5,  3,         150",
        "1 each lemons,             1.5,  1½,        -",
        "10 each cardamom pods,     1.25, 13,        -",
        "0.5 kg bread flour,        1.5,  750 g,     750",
        "1 cup plain flour,         1.5,  1½ cups,   198.13",
        "7 oz butter,               2,    14 oz,     396.89",
        "250 ml whole milk,         0.5,  125 ml,    128.92",
        "1 pinch salt,              2,    2 pinches, -",
    })
    void scales_and_rounds_as_a_person_weighs(String line, String factor, String weighed, String grams) {
        WeighedLine result =
                scaled(Recipes.of(Recipes.lines(line)), times(factor)).lines().get(0);
        assertThat(QuantityWriter.text(result.weighed().orElseThrow())).isEqualTo(weighed);
        assertThat(result.grams()
                        .map(value -> Rationals.rounded(value, 2).toPlainString())
                        .orElse("-"))
                .isEqualTo(grams);
    }

    @Test
    void the_written_batch_stays_as_written() {
        Recipe recipe = Recipes.of(Recipes.lines("62.37 g butter", "0.4 tsp salt", "2.5 each eggs"), MAKES_12);
        ScaledRecipe same = scaled(recipe, new Batch.Makes(Rationals.of(12), "buns"));
        assertThat(same.lines()).allSatisfy(line -> {
            assertThat(line.weighed()).isEqualTo(line.written().quantity());
            assertThat(line.exact()).isEqualTo(line.written().quantity());
        });
        assertThat(same.warnings()).isEmpty();
    }

    @Test
    void a_line_without_a_quantity_stays_without() {
        Recipe recipe = Recipes.of(List.of(Recipes.line("salt", 10, Optional.empty(), "salt")));
        assertThat(scaled(recipe, times("2")).lines()).singleElement().satisfies(line -> {
            assertThat(line.weighed()).isEmpty();
            assertThat(line.grams()).isEmpty();
        });
    }

    @Test
    void what_is_not_stated_stays_in_its_own_words() {
        Quantity splash = new Quantity(new Amount.Unstated("a splash"), Unit.PINCH);
        Recipe recipe = Recipes.of(List.of(Recipes.line("a splash of milk", 10, Optional.of(splash), "milk")));
        assertThat(scaled(recipe, times("2")).lines().get(0).weighed()).contains(splash);
    }

    @Test
    void yield_12_to_30_is_two_and_a_half_batches() {
        Recipe recipe = Recipes.of(Recipes.lines("225 g butter", "3 each large eggs"), MAKES_12);
        ScaledRecipe thirty = scaled(recipe, new Batch.Makes(Rationals.of(30), ""));
        assertThat(thirty.factor()).isEqualTo(Rationals.of("2.5"));
        assertThat(thirty.lines().get(0).exact()).contains(Quantity.of(Rationals.of("562.5"), Unit.GRAM));
        assertThat(thirty.lines().get(1).exact()).contains(Quantity.of(Rationals.of("7.5"), Unit.EACH));
        assertThat(thirty.lines().get(1).weighed()).contains(Quantity.of(8, Unit.EACH));
    }

    @Test
    void eggs_that_do_not_come_out_whole_are_told_with_the_grams_and_the_whole_batch() {
        Recipe recipe = Recipes.of(
                Recipes.lines("2 each large eggs"),
                Recipes.setting(Setting.Kind.PAN, Quantity.of(20, Unit.CENTIMETRE), "round cake tin", 1));
        Batch tin = Batch.tin(Place.of("episode.yaml"), "23 cm round");
        assertThat(scaled(recipe, tin).warnings())
                .extracting(Note::toString)
                .containsExactly(
                        "recipe.md:3: from 20 cm round to 23 cm round by the area of the base: the tin is filled as high"
                                + " as the recipe fills its own.",
                        "recipe.md:3: a larger tin takes somewhat longer, so test before it comes out (common practice, no"
                                + " source).",
                        "recipe.md: baking time and temperature are not scaled; watch the bake, not the clock (common"
                                + " practice, no source).",
                        "recipe.md:10: large eggs: 2.65 rounded to 3, which is 13% more. To keep the proportions, weigh"
                                + " out 132 g of beaten egg (50 g each: USDA SR26 01123, large without shell), or make the"
                                + " recipe × 1.5, which takes 3.");
    }

    @Test
    void raising_agents_and_spices_are_questioned_beyond_three_batches() {
        Recipe recipe = Recipes.of(Recipes.lines("1 tsp baking powder", "1 tsp ground cinnamon", "100 g plain flour"));
        assertThat(scaled(recipe, times("3")).warnings()).hasSize(1);
        assertThat(scaled(recipe, times("4")).warnings())
                .extracting(Note::toString)
                .contains(
                        "recipe.md:10: beyond × 3 these may raise too much or too little when scaled straight: baking"
                                + " powder. Test-bake the batch (common practice, no source).",
                        "recipe.md:11: beyond × 3 these may come out too strong when scaled straight: cinnamon. Start"
                                + " with less and taste (common practice, no source).")
                .hasSize(3);
    }

    @Test
    void hard_rounding_is_told() {
        Recipe recipe = Recipes.of(Recipes.lines("0.25 tsp salt"));
        assertThat(scaled(recipe, times("0.25")).warnings())
                .extracting(Note::toString)
                .contains("recipe.md:10: salt: 0.06 tsp rounded to ⅛ tsp, which is 100% more.");
    }

    @Test
    void the_recipes_own_tin_is_not_scaled_by_a_factor() {
        Recipe recipe = Recipes.of(
                Recipes.lines("100 g butter"),
                Recipes.setting(Setting.Kind.PAN, Quantity.of(20, Unit.CENTIMETRE), "square tin", 1));
        assertThat(scaled(recipe, times("2")).warnings())
                .extracting(Note::toString)
                .contains("recipe.md:3: tins are not scaled: this batch needs × 2 the tin's area, or as many tins.");
    }

    @Test
    void no_yield_and_no_tin_are_bad_input() {
        Recipe recipe = Recipes.of(Recipes.lines("100 g butter"));
        assertThatThrownBy(() -> scaled(recipe, new Batch.Makes(Rationals.of(30), "")))
                .isInstanceOf(BadInput.class)
                .hasMessage("recipe.md: the recipe states no yield to scale from; add a line such as “Makes 12”, or"
                        + " scale by times.");
        assertThatThrownBy(() -> scaled(recipe, Batch.tin(Place.of("x"), "20 cm round")))
                .isInstanceOf(BadInput.class)
                .hasMessage("recipe.md: the recipe states no tin to scale from; add a line such as “Tin: 20 cm round”,"
                        + " or scale by times.");
    }

    @Test
    void a_yield_counted_in_something_else_is_told() {
        Recipe recipe = Recipes.of(Recipes.lines("100 g butter"), MAKES_12);
        assertThat(scaled(recipe, Batch.makes(Place.of("x"), "24 slices")).warnings())
                .extracting(Note::toString)
                .contains("recipe.md:3: the recipe makes 12 buns and the batch is given in slices; they are taken to be"
                        + " the same.");
        assertThat(scaled(recipe, Batch.makes(Place.of("x"), "12 buns")).warnings())
                .isEmpty();
    }

    @Test
    void what_is_left_of_one_ingredient_sets_the_batch_over_all_its_lines() {
        Recipe recipe = Recipes.of(Recipes.lines("100 g unsalted butter", "50 g butter", "2 each eggs"));
        Batch left = new Batch.Left("butter", Quantity.of(250, Unit.GRAM));
        assertThat(scaled(recipe, left).factor()).isEqualTo(Rationals.of(5, 3));
        ScaledRecipe cup = scaled(recipe, new Batch.Left("butter", Quantity.of(1, Unit.CUP)));
        assertThat(Rationals.rounded(cup.factor(), 4).toPlainString())
                .as("227 g in a US cup of 236.59 ml (USDA SR26 01145), so 239.87 g in 250 ml")
                .isEqualTo("1.5991");
        assertThat(cup.warnings())
                .extracting(Note::toString)
                .contains(
                        "recipe.md: 1 cup of butter is taken as about 240 g, for the recipe measures it otherwise; weigh it"
                                + " to be sure.");
        assertThatThrownBy(() -> scaled(recipe, new Batch.Left("butter", Quantity.of(3, Unit.EACH))))
                .isInstanceOf(BadInput.class)
                .hasMessage("recipe.md: 3 of butter has no known weight, so say what is left of it in the same kind of"
                        + " measure as the recipe does.");
        assertThatThrownBy(() -> scaled(recipe, new Batch.Left("cocoa", Quantity.of(1, Unit.GRAM))))
                .isInstanceOf(BadInput.class)
                .hasMessage("recipe.md: no ingredient line states an amount of cocoa; name an ingredient as the recipe"
                        + " does.");
    }

    @Test
    void a_tin_without_a_base_to_reckon_is_bad_input_with_its_line() {
        Recipe recipe = Recipes.of(
                Recipes.lines("100 g butter"),
                Recipes.setting(Setting.Kind.PAN, Quantity.of(23, Unit.CENTIMETRE), "loaf tin", 1));
        assertThatThrownBy(() -> scaled(recipe, Batch.tin(Place.of("x"), "20 cm round")))
                .isInstanceOf(BadInput.class)
                .hasMessage(
                        "recipe.md:3: this tin has no base that can be reckoned; write it as 20 cm round, 20 cm square,"
                                + " 23 × 13 cm or 1.5 litre, or scale by times.");
    }

    @Test
    void a_weight_is_no_number_of_buns() {
        Recipe recipe = Recipes.of(Recipes.lines("100 g butter"), MAKES_12);
        assertThatThrownBy(() -> scaled(recipe, Batch.makes(Place.of("x"), "18 kg")))
                .isInstanceOf(BadInput.class)
                .hasMessage(
                        "recipe.md:3: the recipe makes 12 buns, and a batch of 18 kg is measured otherwise; give it as"
                                + " the recipe does, or scale by times.");
        Recipe dough = Recipes.of(
                Recipes.lines("500 g bread flour"),
                Recipes.setting(Setting.Kind.YIELD, Quantity.of(800, Unit.GRAM), "dough", 1));
        assertThat(scaled(dough, Batch.makes(Place.of("x"), "1.2 kg")).factor()).isEqualTo(Rationals.of("1.5"));
    }

    @Test
    void a_batch_out_of_all_bounds_is_bad_input() {
        Recipe recipe = Recipes.of(Recipes.lines("100 g butter"), MAKES_12);
        assertThatThrownBy(() -> scaled(recipe, Batch.makes(Place.of("x"), "999999")))
                .isInstanceOf(BadInput.class)
                .hasMessage(
                        "recipe.md: this batch would be × 83333.25 of the recipe, and a batch is from 0.01 to 100 times;"
                                + " check the figures.");
    }

    @Test
    void a_deeper_tin_of_the_same_base_takes_more_and_bakes_longer() {
        Recipe recipe = Recipes.of(
                Recipes.lines("100 g butter"),
                new Setting(
                        Setting.Kind.PAN,
                        Quantity.of(20, Unit.CENTIMETRE),
                        Optional.empty(),
                        List.of(),
                        "round tin",
                        1,
                        0,
                        3,
                        Optional.of(Quantity.of(5, Unit.CENTIMETRE))));
        ScaledRecipe deep = scaled(recipe, Batch.tin(Place.of("x"), "20 cm round, 10 cm deep"));
        assertThat(deep.factor()).isEqualTo(Rationals.of(2));
        assertThat(deep.warnings())
                .extracting(Note::toString)
                .contains(
                        "recipe.md:3: from 20 cm round, 5 cm deep to 20 cm round, 10 cm deep by volume: the tin is filled to"
                                + " the same share of the depth.",
                        "recipe.md:3: the batter stands about × 2 as high: it bakes longer, in an oven 10 to 20 °C cooler so"
                                + " that the edges do not dry out (common practice, no source).");
        assertThat(scaled(recipe, Batch.tin(Place.of("x"), "20 cm round, 5 cm deep"))
                        .warnings())
                .isEmpty();
    }

    @Test
    void more_tins_than_the_oven_bakes_at_once_go_in_rounds() {
        Recipe recipe = Recipes.of(
                Recipes.lines("100 g butter"),
                Recipes.setting(Setting.Kind.PAN, Quantity.of(20, Unit.CENTIMETRE), "round tins", 2));
        assertThat(scaled(recipe, times("2.5")).warnings())
                .extracting(Note::toString)
                .contains(
                        "recipe.md:3: 5 tins bake in 3 rounds, two at a time in one oven; mix each round when the oven is"
                                + " free, for batter with a raising agent or whisked eggs waits badly (common practice, no source).");
        ScaleRules two = new ScaleRules(Quantity.of(1, Unit.GRAM), Household.METRIC, 2, Optional.empty());
        assertThat(Scaler.scale(recipe, times("2"), two, Pantry.standard()).warnings())
                .extracting(Note::sentence)
                .noneMatch(note -> note.contains("rounds"));
    }

    @Test
    void more_than_half_the_mixers_bowl_is_mixed_in_lots() {
        Recipe recipe = Recipes.of(Recipes.lines("500 g plain flour", "400 g butter"));
        assertThat(scaled(recipe, times("3")).warnings())
                .extracting(Note::toString)
                .contains(
                        "recipe.md: the sponge is 2700 g in all, more than half of a household mixer's 4.5 litres: mix it"
                                + " in 2 lots (common practice, no source).");
        ScaleRules large = new ScaleRules(
                Quantity.of(1, Unit.GRAM), Household.METRIC, 1, Optional.of(Quantity.of(20, Unit.LITRE)));
        assertThat(Scaler.scale(recipe, times("3"), large, Pantry.standard()).warnings())
                .extracting(Note::sentence)
                .noneMatch(note -> note.contains("mixer"));
    }

    /** An Australian tablespoon is 20 ml, four teaspoons (NSW Health conversion chart). */
    @Test
    void spoons_are_those_of_the_kitchen() {
        Recipe recipe = Recipes.of(Recipes.lines("1 tbsp whole milk"));
        ScaleRules australian = ScaleRules.standard().with(Household.AUSTRALIAN);
        WeighedLine quarter = Scaler.scale(recipe, times("0.25"), australian, Pantry.standard())
                .lines()
                .get(0);
        assertThat(quarter.weighed().map(QuantityWriter::text)).contains("1 tsp");
        assertThat(quarter.error()).contains(Rationals.ZERO);
    }

    @Test
    void many_spoons_of_what_does_not_pour_are_weighed_and_of_what_pours_go_into_a_jug() {
        Recipe recipe = Recipes.of(Recipes.lines("3 tbsp icing sugar", "3 tbsp whole milk"));
        List<WeighedLine> lines = scaled(recipe, times("4")).lines();
        assertThat(lines.get(0).weighed().map(QuantityWriter::text))
                .as("8 g in a tablespoon of 14.79 ml (USDA SR26 19336), so 97.4 g in twelve of 15 ml")
                .contains("about 97 g");
        assertThat(lines.get(1).weighed().map(QuantityWriter::text)).contains("180 ml");
    }

    @Test
    void a_weight_written_beside_a_measure_is_better_than_the_pantrys() {
        IngredientLine flour = new IngredientLine(
                "3 cups (360 g) plain flour",
                10,
                Optional.of(Quantity.of(3, Unit.CUP)),
                Optional.of(Quantity.of(360, Unit.GRAM)),
                "",
                "plain flour",
                "",
                false,
                List.of());
        assertThat(scaled(Recipes.of(List.of(flour)), times("2")).lines().get(0).grams())
                .contains(Rationals.of(720));
    }
}
