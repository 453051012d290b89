package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.misecue.quantity.Quantities.rational;

import java.util.Arrays;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tech.units.indriya.function.RationalNumber;

class UnitTest {

    /** Against published tables, each row with its source. Base units: g, ml, °C, min, cm. */
    @ParameterizedTest(name = "{0} {1} ({2}) is {3}: {5}")
    @CsvFileSource(resources = "conversions.csv", numLinesToSkip = 1)
    void converts_as_published(
            String amount, String unit, Household household, String inBase, int places, String source) {
        RationalNumber base = Unit.ofCode(unit).orElseThrow().toBase(Rationals.of(amount), household);
        assertThat(Rationals.rounded(base, places)).as(source).isEqualByComparingTo(inBase);
        if (places > 1) {
            assertThat(base).as("exact").isEqualTo(Rationals.of(inBase));
        }
    }

    /** Gas-mark tables: from mark 1 up, °F = 250 + 25 · mark; ½ is 250 and ¼ is 225 °F. */
    @ParameterizedTest(name = "gas mark {0} is {1} °F")
    @CsvSource({
        "1/4, 225",
        "1/2, 250",
        "1, 275",
        "2, 300",
        "3, 325",
        "4, 350",
        "5, 375",
        "6, 400",
        "7, 425",
        "8, 450",
        "9, 475"
    })
    void gas_marks_are_whole_degrees_fahrenheit_both_ways(String mark, long fahrenheit) {
        Quantity gas = Quantity.of(rational(mark), Unit.GAS_MARK);
        Quantity degrees = Quantity.of(fahrenheit, Unit.FAHRENHEIT);
        assertThat(gas.in(Unit.FAHRENHEIT, Household.METRIC)).isEqualTo(degrees);
        assertThat(degrees.in(Unit.GAS_MARK, Household.METRIC)).isEqualTo(gas);
    }

    /** Calculated from the published sizes. */
    @Test
    void half_a_pound_is_not_the_250_grams_of_kitchen_charts() {
        Quantity half = Quantity.of(rational("1/2"), Unit.POUND).in(Unit.GRAM, Household.METRIC);
        assertThat(QuantityWriter.text(half)).isEqualTo("226.8 g");
    }

    /** Calculated from the published sizes. */
    @Test
    void an_australian_tablespoon_is_four_teaspoons_and_any_other_three() {
        for (Household household : Household.values()) {
            Quantity teaspoons = Quantity.of(1, Unit.TABLESPOON).in(Unit.TEASPOON, household);
            assertThat(teaspoons)
                    .as(household.name())
                    .isEqualTo(Quantity.of(household == Household.AUSTRALIAN ? 4 : 3, Unit.TEASPOON));
        }
    }

    @Test
    void dimensions_never_mix_and_the_message_names_both() {
        assertThatThrownBy(() -> Quantity.of(2, Unit.CUP).in(Unit.GRAM, Household.METRIC))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("2 cups is a volume and cannot become g, a mass");
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void every_unit_is_found_by_its_code(Unit unit) {
        assertThat(Unit.ofCode(unit.code())).contains(unit);
    }

    /** Source: design of the JSON documents, which name these units; stick is ours besides. */
    @Test
    void codes_are_those_of_the_json_documents() {
        assertThat(Arrays.stream(Unit.values()).map(Unit::code))
                .containsExactlyInAnyOrder(
                        "g kg ml l tsp tbsp cup fl-oz pint oz lb stick each pinch C F gas min h cm in".split(" "));
        assertThat(Unit.ofCode("G")).isEqualTo(Optional.empty());
    }
}
