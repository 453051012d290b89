package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import tech.units.indriya.function.RationalNumber;

class QuantityPropertyTest {

    @Property(tries = 500)
    void conversion_there_and_back_is_exact(
            @ForAll("amounts") RationalNumber amount, @ForAll Unit from, @ForAll Unit to, @ForAll Household household) {
        Assume.that(from.dimension() == to.dimension());
        Assume.that(from != Unit.GAS_MARK && to != Unit.GAS_MARK);
        Quantity quantity = Quantity.of(amount, from);
        assertThat(quantity.in(to, household).in(from, household)).isEqualTo(quantity);
    }

    @Property(tries = 200)
    void gas_marks_from_one_up_convert_there_and_back(@ForAll @IntRange(min = 4, max = 40) int quarters) {
        Quantity mark = Quantity.of(Rationals.of(quarters, 4), Unit.GAS_MARK);
        assertThat(mark.in(Unit.CELSIUS, Household.METRIC).in(Unit.GAS_MARK, Household.METRIC))
                .isEqualTo(mark);
    }

    @Property(tries = 500)
    void scaling_by_a_then_by_b_is_scaling_by_both(
            @ForAll("quantities") Quantity quantity,
            @ForAll("amounts") RationalNumber a,
            @ForAll("amounts") RationalNumber b) {
        assertThat(quantity.times(a).times(b)).isEqualTo(quantity.times(a.multiply(b)));
    }

    @Property(tries = 500)
    void converting_and_scaling_go_in_either_order(
            @ForAll("amounts") RationalNumber amount, @ForAll("amounts") RationalNumber factor) {
        Quantity cups = Quantity.of(amount, Unit.CUP);
        assertThat(cups.times(factor).in(Unit.MILLILITRE, Household.US_CUSTOMARY))
                .isEqualTo(cups.in(Unit.MILLILITRE, Household.US_CUSTOMARY).times(factor));
    }

    @Property(tries = 500)
    void vulgar_text_of_exact_eighths_and_thirds_loses_nothing(
            @ForAll @IntRange(max = 200) int whole, @ForAll("fractions") Vulgar fraction) {
        RationalNumber value = Rationals.of(whole).add(fraction.value());
        String text = QuantityWriter.number(value, Unit.TEASPOON);
        assertThat(text).isEqualTo((whole == 0 ? "" : whole) + fraction.glyph());
    }

    @Property(tries = 500)
    void decimal_text_of_whole_and_half_grams_loses_nothing(@ForAll @IntRange(min = 1, max = 1999) int halves) {
        RationalNumber value = Rationals.of(halves, 2);
        assertThat(Rationals.of(QuantityWriter.number(value, Unit.GRAM))).isEqualTo(value);
    }

    @Property(tries = 500)
    void kitchen_rounding_is_stable_and_never_nothing(@ForAll("quantities") Quantity quantity) {
        KitchenRounding rounding = KitchenRounding.toTheGram();
        Quantity once = rounding.round(quantity).quantity();
        assertThat(once.amount().least().orElseThrow().signum()).isPositive();
        assertThat(rounding.round(once)).isEqualTo(new KitchenRounding.Rounded(once, Rationals.ZERO));
    }

    @Example
    void what_comes_out_as_a_larger_measure_is_told_in_it() {
        KitchenRounding rounding = KitchenRounding.toTheGram();
        assertThat(rounding.round(Quantity.of(Rationals.of(149, 50), Unit.TEASPOON))
                        .quantity())
                .isEqualTo(Quantity.of(1, Unit.TABLESPOON));
        assertThat(rounding.round(Quantity.of(Rationals.of(319, 10), Unit.OUNCE))
                        .quantity())
                .isEqualTo(Quantity.of(2, Unit.POUND));
    }

    @Property(tries = 500)
    void every_quantity_can_be_written_and_said(@ForAll("quantities") Quantity quantity) {
        assertThat(QuantityWriter.text(quantity)).isNotBlank().doesNotContain("  ", "null");
        assertThat(QuantityWriter.words(quantity))
                .isNotBlank()
                .doesNotContain("  ", "null")
                .doesNotMatch(".*\\d.*");
    }

    @Property(tries = 500)
    void what_is_written_reads_back(@ForAll("kitchenQuantities") Quantity quantity) {
        String text = QuantityWriter.text(quantity);
        assertThat(new QuantityReader().read(text + " of it").map(WrittenQuantity::quantity))
                .as(text)
                .hasValueSatisfying(read ->
                        assertThat(read.sameSize(quantity, Household.METRIC)).isTrue());
    }

    /** Amounts that a recipe prints without loss: halves of metric units, thirds and eighths of household ones. */
    @Provide
    Arbitrary<Quantity> kitchenQuantities() {
        Arbitrary<Quantity> metric = Combinators.combine(
                        Arbitraries.integers().between(1, 9000), Arbitraries.of(Unit.GRAM, Unit.MILLILITRE))
                .as((halves, unit) -> Quantity.of(Rationals.of(halves, 2), unit));
        Arbitrary<Quantity> household = Combinators.combine(
                        Arbitraries.integers().between(0, 40),
                        fractions(),
                        Arbitraries.of(Unit.TEASPOON, Unit.TABLESPOON, Unit.CUP, Unit.OUNCE, Unit.POUND))
                .as((whole, fraction, unit) -> Quantity.of(Rationals.of(whole).add(fraction.value()), unit));
        Arbitrary<Quantity> ranges = Combinators.combine(
                        Arbitraries.integers().between(1, 40),
                        Arbitraries.integers().between(1, 9),
                        Arbitraries.of(Unit.TABLESPOON, Unit.GRAM, Unit.CUP, Unit.PINCH))
                .as((from, more, unit) ->
                        new Quantity(Amount.between(Rationals.of(from), Rationals.of(from + more)), unit));
        return Arbitraries.oneOf(metric, household, ranges);
    }

    @Provide
    Arbitrary<RationalNumber> amounts() {
        return Combinators.combine(
                        Arbitraries.longs().between(1, 20_000), Arbitraries.of(1L, 2L, 3L, 4L, 7L, 8L, 10L, 16L))
                .as((dividend, divisor) -> Rationals.of(dividend, divisor));
    }

    @Provide
    Arbitrary<Quantity> quantities() {
        Arbitrary<Amount> amounts = Combinators.combine(amounts(), amounts())
                .as((one, other) -> one.equals(other) ? new Amount.Exact(one) : Amount.between(one, other));
        return Combinators.combine(amounts, Arbitraries.of(Arrays.asList(Unit.values())))
                .as(Quantity::new);
    }

    @Provide
    Arbitrary<Vulgar> fractions() {
        return Arbitraries.of(Vulgar.EIGHTHS_AND_THIRDS);
    }
}
