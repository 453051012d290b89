package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.misecue.quantity.Quantities.rational;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KitchenRoundingTest {

    @ParameterizedTest(name = "{1} {2} on a scale that shows {0} g is {3}, off by {4}")
    @CsvSource({
        "1,   562.5, g,    563 g,     1/1125",
        "5,   562.5, g,    565 g,     1/225",
        "0.1, 562.5, g,    562.5 g,   0",
        "0.1, 2.34,  g,    2.3 g,     -2/117",
        "1,   0.2,   g,    1 g,       4",
        "5,   1.2346, kg,  1.235 kg,  2/6173",
        "0.1, 99.6,  ml,   100 ml,    1/249",
        "1,   1/3,   oz,   ⅜ oz,      1/8",
        "1,   9/8,   tsp,  1⅛ tsp,    0",
        "1,   0.05,  tsp,  ⅛ tsp,     3/2",
        "1,   0.3,   tsp,  ¼ tsp,    -1/6",
        "1,   0.95,  tsp,  1 tsp,     1/19",
        "1,   2.6,   tbsp, 2½ tbsp,   -1/26",
        "1,   2/3,   tbsp, 2 tsp,     0",
        "1,   5/3,   tbsp, 5 tsp,     0",
        "1,   9,     tbsp, 135 ml,    0",
        "1,   20,    tsp,  6½ tbsp,   -1/40",
        "1,   33333, tbsp, 499.995 litres, 0",
        "1,   10.6,  oz,   10½ oz,    -1/106",
        "1,   56,    oz,   3½ lb,     0",
        "1,   57.1,  oz,   3 lb 9 oz, -1/571",
        "1,   1.92,  lb,   1 lb 14¾ oz, 1/1024",
        "1,   0.4,   lb,   6½ oz,     1/64",
        "1,   0.25,  tbsp, ¾ tsp,     0",
        "1,   0.125, cup,  2 tbsp,    0",
        "1,   3,     tsp,  1 tbsp,    0",
        "1,   4,     tsp,  4 tsp,     0",
        "1,   1.4,   cup,  1⅓ cups,   -1/21",
        "1,   2.645, each, 2½,        -29/529",
        "1,   0.1,   each, ½,         4",
        "1,   7.5,   each, 8,         1/15",
        "1,   1.5,   pinch, 2 pinches, 1/3",
        "1,   183.3, C,    183.3 °C,  0",
        "1,   2.4-3.4, tsp, 2⅜–3⅜ tsp, -1/96",
    })
    void rounds_as_a_person_weighs(String resolution, String amount, String unit, String rounded, String error) {
        Household cups = unit.equals("cup") ? Household.US_CUSTOMARY : Household.METRIC;
        KitchenRounding rounding = new KitchenRounding(Quantities.of(resolution, "g"), cups);
        KitchenRounding.Rounded result = rounding.round(Quantities.of(amount, unit));
        assertThat(QuantityWriter.text(result.quantity())).isEqualTo(rounded);
        assertThat(result.relativeError()).isEqualTo(rational(error));
    }

    @Test
    void eggs_come_whole() {
        KitchenRounding.Rounded eggs = KitchenRounding.toTheGram().roundWhole(Quantities.of("2.645", "each"));
        assertThat(eggs.quantity()).isEqualTo(Quantity.of(3, Unit.EACH));
        assertThat(eggs.relativeError()).isEqualTo(rational("71/529"));
    }

    @Test
    void an_australian_tablespoon_breaks_into_four_teaspoons() {
        KitchenRounding rounding = new KitchenRounding(Quantity.of(1, Unit.GRAM), Household.AUSTRALIAN);
        assertThat(QuantityWriter.text(
                        rounding.round(Quantities.of("0.25", "tbsp")).quantity()))
                .isEqualTo("1 tsp");
    }

    @Test
    void hedges_and_unstated_amounts_pass_through() {
        Quantity about = new Quantity(new Amount.Approximate(new Amount.Exact(rational("69.7")), "about"), Unit.GRAM);
        Quantity some = new Quantity(new Amount.Unstated("some"), Unit.PINCH);
        assertThat(QuantityWriter.text(KitchenRounding.toTheGram().round(about).quantity()))
                .isEqualTo("about 70 g");
        assertThat(KitchenRounding.toTheGram().round(some).quantity()).isEqualTo(some);
    }

    @Test
    void a_scale_shows_a_mass_above_zero() {
        assertThatThrownBy(() -> new KitchenRounding(Quantity.of(1, Unit.MILLILITRE), Household.METRIC))
                .hasMessage("a scale's resolution is a mass above zero, such as 1 g, not 1 ml");
        assertThatThrownBy(() -> new KitchenRounding(Quantity.of(0, Unit.GRAM), Household.METRIC))
                .hasMessageEndingWith("not 0 g");
    }
}
