package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;

class WeighingTest {

    private static Ingredient ingredient(String name) {
        return Pantry.standard().find(name).orElseThrow();
    }

    private static Quantity quantity(String amount, String unit) {
        String[] ends = amount.split("-");
        return new Quantity(
                Amount.between(Rationals.of(ends[0]), Rationals.of(ends[ends.length - 1])),
                Unit.ofCode(unit).orElseThrow());
    }

    /** Calculated from the pantry's USDA SR26 weights and the sizes of the measures. */
    @ParameterizedTest(name = "{0} {1} of {2} ({3}) is {4}")
    @CsvSource({
        "1,    cup,  plain flour,   US_CUSTOMARY, about 125 g",
        "1,    cup,  plain flour,   AUSTRALIAN,   about 132.09 g",
        "2,    cup,  caster sugar,  US_CUSTOMARY, about 400 g",
        "1,    tbsp, butter,        US_CUSTOMARY, about 14.2 g",
        "1,    tbsp, honey,         AUSTRALIAN,   about 28.4 g",
        "1,    tsp,  baking powder, METRIC,       about 4.67 g",
        "2-3,  tbsp, lemon juice,   US_CUSTOMARY, about 30.5–45.75 g",
        "100,  ml,   water,         METRIC,       about 100.17 g",
        "2,    each, large eggs,    METRIC,       about 100 g",
        "0.5,  each, lemon juice,   METRIC,       about 24 g",
        "200,  g,    plain flour,   METRIC,       200 g",
        "1,    lb,   butter,        METRIC,       453.59 g",
        "1,    stick, butter,       US_CUSTOMARY, 113.4 g",
    })
    void weighs(String amount, String unit, String name, Household household, String grams) {
        assertThat(Weighing.inGrams(quantity(amount, unit), ingredient(name), household)
                        .map(QuantityWriter::text))
                .contains(grams);
    }

    @Test
    void what_the_pantry_has_no_weight_for_stays_unweighed() {
        assertThat(Weighing.inGrams(quantity("1", "each"), ingredient("courgette"), Household.METRIC))
                .isEmpty();
        assertThat(Weighing.inGrams(quantity("1", "cup"), ingredient("saffron"), Household.METRIC))
                .isEmpty();
        assertThat(Weighing.inGrams(quantity("1", "pinch"), ingredient("salt"), Household.METRIC))
                .isEmpty();
        Quantity splash = new Quantity(new Amount.Unstated("a splash"), Unit.TEASPOON);
        assertThat(Weighing.inGrams(splash, ingredient("milk"), Household.METRIC))
                .isEmpty();
    }

    @Test
    void of_a_range_the_upper_end_is_made_ready() {
        assertThat(Weighing.grams(quantity("2-3", "tbsp"), ingredient("milk"), Household.US_CUSTOMARY))
                .contains(Rationals.of(45));
    }

    @Test
    void a_hedge_that_is_there_is_kept() {
        Quantity roughly = new Quantity(new Amount.Approximate(Amount.of(2), "roughly"), Unit.CUP);
        assertThat(Weighing.inGrams(roughly, ingredient("plain flour"), Household.US_CUSTOMARY)
                        .map(QuantityWriter::text))
                .contains("roughly 250 g");
    }

    /** Calculated from the pantry's USDA SR26 weights and the sizes of the measures. */
    @ParameterizedTest(name = "{0} {1} of {2} ({3}) is {4}")
    @CsvSource({
        "125, g,  plain flour,   US_CUSTOMARY, about 1 cup",
        "360, g,  plain flour,   US_CUSTOMARY, about 3 cups",
        "225, g,  caster sugar,  US_CUSTOMARY, about 18 tbsp",
        "113, g,  plain flour,   US_CUSTOMARY, about 14½ tbsp",
        "450, ml, milk,          US_CUSTOMARY, about 30½ tbsp",
        "7.4, ml, milk,          US_CUSTOMARY, about 1½ tsp",
        "18.5, ml, milk,         US_CUSTOMARY, about 3¾ tsp",
        "0.2, ml, milk,          METRIC,       about ⅛ tsp",
        "200, g,  caster sugar,  US_CUSTOMARY, about 1 cup",
        "75,  g,  caster sugar,  US_CUSTOMARY, about 6 tbsp",
        "28,  g,  butter,        US_CUSTOMARY, about 2 tbsp",
        "14,  g,  baking powder, METRIC,       about 1 tbsp",
        "7,   oz, icing sugar,   US_CUSTOMARY, about 1⅔ cups",
        "250, ml, milk,          METRIC,       about 1 cup",
        "75,  ml, milk,          AUSTRALIAN,   about 4 tbsp",
        "15,  ml, milk,          METRIC,       about 1 tbsp",
    })
    void says_it_in_cups_and_spoons(String amount, String unit, String name, Household household, String measure) {
        assertThat(HouseholdMeasure.of(quantity(amount, unit), ingredient(name), household)
                        .map(QuantityWriter::text))
                .contains(measure);
    }

    @Test
    void no_weight_no_household_measure() {
        assertThat(HouseholdMeasure.of(quantity("50", "g"), ingredient("walnut oil"), Household.METRIC))
                .isEmpty();
        assertThat(HouseholdMeasure.of(quantity("2", "each"), ingredient("egg"), Household.METRIC))
                .isEmpty();
        assertThat(HouseholdMeasure.of(quantity("1", "g"), Household.METRIC)).isEmpty();
    }

    /** Source: EUR-Lex summary of 589/2008, classes unchanged in (EU) 2023/2465: S < 53, M 53–<63, L 63–<73, XL ≥ 73 g. */
    @ParameterizedTest(name = "an egg of {0} g is {1}")
    @CsvSource({"40, S", "52, S", "53, M", "62, M", "63, L", "72, L", "73, XL", "90, XL"})
    void eggs_are_graded_in_the_shell(int grams, String mark) {
        assertThat(EggClass.weighing(grams).mark()).isEqualTo(mark);
        assertThat(EggClass.named(mark)).contains(EggClass.weighing(grams));
    }
}
