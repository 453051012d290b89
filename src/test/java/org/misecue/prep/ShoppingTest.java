package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.quantity.Unit.CUP;
import static org.misecue.quantity.Unit.EACH;
import static org.misecue.quantity.Unit.GRAM;
import static org.misecue.quantity.Unit.MILLILITRE;
import static org.misecue.quantity.Unit.TEASPOON;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
                .containsExactlyInAnyOrder("unsalted butter, 700 g (and some for greasing)", "large eggs, 8");
    }

    @Test
    void two_kinds_of_one_thing_stay_apart() {
        TestKitchen kitchen = new TestKitchen("Butters")
                .component("")
                .line("100", GRAM, "unsalted butter", "")
                .line("50", GRAM, "salted butter", "");
        assertThat(shopping(kitchen, 1)).containsExactly("salted butter, 50 g", "unsalted butter, 100 g");
    }

    @Test
    void measures_and_weights_of_one_thing_add_up_in_grams() {
        // USDA SR26 20081: plain flour, 125 g in a US cup of 236.6 ml; a metric cup of 250 ml holds 132.1 g.
        TestKitchen kitchen = new TestKitchen("Flours")
                .component("")
                .line("100", GRAM, "plain flour", "")
                .line("1", CUP, "plain flour", "");
        assertThat(shopping(kitchen, 1)).containsExactly("plain flour, 240 g");
    }

    @Test
    void tap_water_is_not_bought_and_a_pinch_is_no_line_of_its_own() {
        TestKitchen kitchen = new TestKitchen("Paste")
                .component("")
                .line("100", MILLILITRE, "water", "")
                .line("1", TEASPOON, "fine salt", "")
                .line("1", Unit.PINCH, "fine salt", "");
        assertThat(shopping(kitchen, 1)).containsExactly("fine salt, 1 tsp (and a pinch)");
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
