package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.quantity.Unit.CUP;
import static org.misecue.quantity.Unit.EACH;
import static org.misecue.quantity.Unit.GRAM;
import static org.misecue.quantity.Unit.MILLILITRE;
import static org.misecue.quantity.Unit.TEASPOON;

import java.util.List;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;

class ShoppingTest {

    private static List<String> shopping(TestKitchen kitchen, int takes) {
        return PrepPlanner.plan(
                        kitchen.asWritten(),
                        Pantry.standard(),
                        PrepSettings.standard().withTakes(takes))
                .shopping()
                .stream()
                .map(PrepWords::purchase)
                .toList();
    }

    @Test
    void lines_merge_over_components_and_takes() {
        TestKitchen kitchen = new TestKitchen("Layers")
                .component("sponge")
                .line("225", GRAM, "unsalted butter", "softened")
                .line("4", EACH, "large eggs", "")
                .component("cream")
                .line("125", GRAM, "unsalted butter", "very soft")
                .unmeasured("butter", "for greasing");
        assertThat(shopping(kitchen, 2))
                .containsExactlyInAnyOrder(
                        "unsalted butter, 700 g (and some for greasing) → 3 × 250 g block (50 g over)",
                        "large eggs, 8 → 1 × box of 10 (2 over)");
    }

    @Test
    void two_kinds_of_one_thing_stay_apart() {
        TestKitchen kitchen = new TestKitchen("Butters")
                .component("")
                .line("100", GRAM, "unsalted butter", "")
                .line("50", GRAM, "salted butter", "");
        assertThat(shopping(kitchen, 1))
                .containsExactly(
                        "salted butter, 50 g → 1 × 250 g block (200 g over)",
                        "unsalted butter, 100 g → 1 × 250 g block (150 g over)");
    }

    @Test
    void measures_and_weights_of_one_thing_add_up_in_grams() {
        // USDA SR26 20081: plain flour, 125 g in a US cup of 236.6 ml; a metric cup of 250 ml holds 132.1 g.
        TestKitchen kitchen = new TestKitchen("Flours")
                .component("")
                .line("100", GRAM, "plain flour", "")
                .line("1", CUP, "plain flour", "");
        assertThat(shopping(kitchen, 1)).containsExactly("plain flour, 233 g → 1 × 500 g bag (268 g over)");
    }

    @Test
    void tap_water_is_not_bought_and_a_pinch_is_no_line_of_its_own() {
        TestKitchen kitchen = new TestKitchen("Paste")
                .component("")
                .line("100", MILLILITRE, "water", "")
                .line("1", TEASPOON, "fine salt", "")
                .line("1", Unit.PINCH, "fine salt", "");
        assertThat(shopping(kitchen, 1)).containsExactly("fine salt, 1 tsp (and a pinch) → 1 × 350 g tub (344 g over)");
    }

    @ParameterizedTest
    @CsvSource({
        "7, g, 10 g",
        "42, g, 45 g",
        "50, g, 50 g",
        "225, g, 230 g",
        "562.5, g, 600 g",
        "2.5, each, 3",
        "1.7, tsp, 1¾ tsp",
        "0.36, l, 400 ml"
    })
    void amounts_are_rounded_up_never_down(String amount, String unit, String bought) {
        Quantity quantity = Quantity.of(Rationals.of(amount), Unit.ofCode(unit).orElseThrow());
        assertThat(QuantityWriter.text(Totals.roundedUp(quantity))).isEqualTo(bought);
    }

    @ParameterizedTest
    @CsvSource({
        "830, g, caster sugar, '830 g → 1 × 1 kg bag (170 g over)'",
        "900, g, plain flour, '900 g → 2 × 500 g bag (100 g over)'",
        "1700, g, plain flour, '1.7 kg → 1 × 1.5 kg bag + 1 × 500 g bag (300 g over)'",
        "2600, g, plain flour, '2.6 kg → 2 × 1.5 kg bag (400 g over)'",
        "12.5, kg, plain flour, '12.5 kg → 8 × 1.5 kg bag + 1 × 500 g bag'",
        "310, ml, double cream, '310 ml → 1 × 300 ml pot + 1 × 150 ml pot (140 ml over)'",
        "11, each, eggs, '11 → 1 × box of 12 (1 over)'",
        "14, each, eggs, '14 → 1 × box of 10 + 1 × box of 6 (2 over)'",
        "14, g, fast-action dried yeast, '14 g → 2 × 7 g sachet'",
        "3, tsp, baking powder, '3 tsp → 1 × 170 g tub (156 g over)'",
        "1.1, l, whole milk, '1.1 litres → 1 × 1 litre bottle + 1 × 500 ml bottle (400 ml over)'",
        "3, each, lemons, '3'",
        "600, g, plums, '600 g'"
    })
    void what_is_sold_in_packs_is_rounded_up_to_packs_with_what_is_over(
            String amount, String unit, String ingredient, String bought) {
        TestKitchen kitchen = new TestKitchen("Packs")
                .component("")
                .line(amount, Unit.ofCode(unit).orElseThrow(), ingredient, "");
        assertThat(shopping(kitchen, 1)).containsExactly(ingredient + ", " + bought);
    }

    @Property(tries = 500)
    void packs_always_reach_the_need_and_none_could_be_left_on_the_shelf(
            @ForAll @IntRange(min = 1, max = 20_000) int need,
            @ForAll @Size(min = 1, max = 3) Set<@IntRange(min = 5, max = 1500) Integer> sizes) {
        List<Long> sorted = sizes.stream().map(Integer::longValue).sorted().toList();
        Assume.that(sorted.get(sorted.size() - 1) / sorted.get(0) < 20);
        List<Long> taken = Packer.fewest(Rationals.of(need), sorted);
        long sum = taken.stream().mapToLong(Long::longValue).sum();
        assertThat(sum).isGreaterThanOrEqualTo(need);
        assertThat(taken).allSatisfy(size -> assertThat(sum - size).isLessThan(need));
    }

    @Test
    void every_name_of_the_pack_table_is_the_pantrys_and_every_aisle_is_on_the_way() {
        for (String name : PackTable.names()) {
            if (name.startsWith("aisle:")) {
                assertThat(Aisles.has(name.substring("aisle:".length())))
                        .as(name)
                        .isTrue();
            } else {
                assertThat(Pantry.standard().find(name).orElseThrow().name()).isEqualTo(name);
            }
        }
        assertThat(Pantry.standard().all())
                .extracting(Ingredient::aisle)
                .filteredOn(aisle -> !aisle.equals("none"))
                .allSatisfy(aisle -> assertThat(Aisles.has(aisle)).as(aisle).isTrue());
    }

    @Test
    void chilled_and_frozen_things_come_last() {
        TestKitchen kitchen = new TestKitchen("Way")
                .component("")
                .line("100", GRAM, "ice cream", "")
                .line("100", GRAM, "unsalted butter", "")
                .line("100", GRAM, "xyzzy crumbs", "")
                .line("100", GRAM, "plain flour", "")
                .line("2", EACH, "lemons", "");
        assertThat(PrepPlanner.plan(kitchen.asWritten(), Pantry.standard(), PrepSettings.standard())
                        .shopping())
                .extracting(Purchase::ingredient)
                .containsExactly("lemons", "plain flour", "xyzzy crumbs", "unsalted butter", "ice cream");
    }

    @Test
    void an_ingredient_that_the_pantry_does_not_know_is_still_bought() {
        TestKitchen kitchen = new TestKitchen("Strange").component("").line("10", GRAM, "xyzzy crumbs", "");
        assertThat(PrepPlanner.plan(kitchen.asWritten(), Pantry.standard(), PrepSettings.standard())
                        .shopping())
                .singleElement()
                .satisfies(purchase -> {
                    assertThat(purchase.aisle()).isEqualTo("other");
                    assertThat(purchase.ingredient()).isEqualTo("xyzzy crumbs");
                });
    }
}
