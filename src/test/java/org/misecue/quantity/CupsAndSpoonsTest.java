package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CupsAndSpoonsTest {

    /** Source: calculated; a US label cup is 16 tablespoons, a metric one 16⅔, an Australian one 12½ of its own. */
    @ParameterizedTest(name = "{0} {1} ({2}) is {3}")
    @CsvSource({
        "19,   tbsp, US_LABEL,   1 cup + 3 tbsp",
        "16,   tbsp, US_LABEL,   1 cup",
        "8,    tbsp, US_LABEL,   8 tbsp",
        "10,   tbsp, US_LABEL,   ½ cup + 2 tbsp",
        "25,   tbsp, METRIC,     1½ cups",
        "25,   tbsp, AUSTRALIAN, 2 cups",
        "7,    tsp,  METRIC,     2 tbsp + 1 tsp",
        "7,    tsp,  AUSTRALIAN, 1 tbsp + 3 tsp",
        "3,    tsp,  METRIC,     3 tsp",
        "4.5,  tsp,  METRIC,     1 tbsp + 1½ tsp",
        "300,  g,    METRIC,     300 g",
    })
    void many_spoons_are_written_with_the_next_larger_measure(
            String amount, String unit, Household household, String text) {
        assertThat(CupsAndSpoons.text(Quantities.of(amount, unit), household)).isEqualTo(text);
    }

    @Test
    void a_hedge_stays_before_the_whole() {
        Quantity about =
                new Quantity(new Amount.Approximate(Quantities.of("7", "tsp").amount(), "about"), Unit.TEASPOON);
        assertThat(CupsAndSpoons.text(about, Household.METRIC)).isEqualTo("about 2 tbsp + 1 tsp");
    }

    @Test
    void a_range_is_written_as_it_is() {
        assertThat(CupsAndSpoons.text(Quantities.of("4-5", "tsp"), Household.METRIC))
                .isEqualTo("4–5 tsp");
    }
}
