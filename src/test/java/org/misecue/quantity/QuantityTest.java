package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.misecue.quantity.Quantities.rational;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

    @Test
    void equality_is_by_value_and_unit() {
        assertThat(Quantities.of("0.50", "tsp")).isEqualTo(Quantities.of("2/4", "tsp"));
        assertThat(Quantities.of("0.50", "tsp")).hasSameHashCodeAs(Quantities.of("2/4", "tsp"));
        assertThat(Quantities.of("1", "kg")).isNotEqualTo(Quantities.of("1000", "g"));
    }

    @Test
    void same_size_sees_through_units_and_hedges() {
        Quantity kilo = Quantities.of("1", "kg");
        Quantity about = new Quantity(new Amount.Approximate(Amount.of(1000), "about"), Unit.GRAM);
        assertThat(kilo.sameSize(Quantities.of("1000", "g"), Household.METRIC)).isTrue();
        assertThat(kilo.sameSize(about, Household.METRIC)).isTrue();
        assertThat(kilo.sameSize(Quantities.of("1", "l"), Household.METRIC)).isFalse();
        assertThat(kilo.sameSize(Quantities.of("1000-1100", "g"), Household.METRIC))
                .isFalse();
    }

    @Test
    void a_range_keeps_its_order_and_closes_to_one_value() {
        assertThat(Amount.between(rational("3"), rational("2")))
                .isEqualTo(Amount.between(rational("2"), rational("3")));
        assertThat(Amount.between(rational("2"), rational("4/2"))).isEqualTo(Amount.of(2));
        assertThatThrownBy(() -> new Amount.Range(rational("3"), rational("2")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is above its upper end");
    }

    @Test
    void a_hedge_outlives_conversion_and_scaling() {
        Quantity about = new Quantity(new Amount.Approximate(Amount.of(2), "roughly"), Unit.POUND);
        assertThat(QuantityWriter.text(about.times(rational("1/2")).in(Unit.OUNCE, Household.METRIC)))
                .isEqualTo("roughly 16 oz");
    }

    @ParameterizedTest(name = "{0} to the nearest {1} is {2}")
    @CsvSource({"2.5, 1, 3", "-2.5, 1, -3", "2.49, 0.5, 2.5", "7, 5, 5", "7.5, 5, 10", "1/3, 1/8, 3/8", "0, 1, 0"})
    void nearest_step_is_half_away_from_zero(String value, String step, String nearest) {
        assertThat(Rationals.nearest(rational(value), rational(step))).isEqualTo(rational(nearest));
    }

    @ParameterizedTest(name = "{0} to {1} places is {2}")
    @CsvSource({"2/3, 2, 0.67", "1/3, 0, 0", "100, 2, 100", "0.005, 2, 0.01", "-0.005, 2, -0.01", "1200.50, 2, 1200.5"})
    void rounds_to_places_without_trailing_zeros(String value, int places, String rounded) {
        assertThat(Rationals.rounded(rational(value), places).toPlainString()).isEqualTo(rounded);
    }

    @ParameterizedTest(name = "floor of {0} is {1}")
    @CsvSource({"2.9, 2", "2, 2", "-0.1, -1", "-2, -2", "0, 0"})
    void floor_goes_down(String value, String floor) {
        assertThat(Rationals.floor(rational(value))).isEqualTo(rational(floor));
    }
}
