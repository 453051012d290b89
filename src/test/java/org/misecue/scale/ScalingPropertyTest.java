package org.misecue.scale;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Recipe;
import tech.units.indriya.function.RationalNumber;

class ScalingPropertyTest {

    private static ScaledRecipe scaled(Quantity quantity, RationalNumber factor) {
        Recipe recipe = Recipes.of(List.of(Recipes.line("line", 10, Optional.of(quantity), "caster sugar")));
        return Scaler.scale(recipe, new Batch.Factor(factor), ScaleRules.standard(), Pantry.standard());
    }

    private static Quantity exact(ScaledRecipe recipe) {
        return recipe.lines().get(0).exact().orElseThrow();
    }

    @Property(tries = 300)
    void scaling_by_a_and_then_by_b_is_scaling_by_both(
            @ForAll("quantities") Quantity quantity,
            @ForAll("factors") RationalNumber a,
            @ForAll("factors") RationalNumber b) {
        Quantity inTwoSteps = exact(scaled(exact(scaled(quantity, a)), b));
        assertThat(inTwoSteps).isEqualTo(exact(scaled(quantity, a.multiply(b))));
    }

    @Property(tries = 300)
    void scaling_there_and_back_is_exact(
            @ForAll("quantities") Quantity quantity, @ForAll("factors") RationalNumber factor) {
        assertThat(exact(scaled(exact(scaled(quantity, factor)), Rationals.ONE.divide(factor))))
                .isEqualTo(quantity);
    }

    @Property(tries = 300)
    void what_is_weighed_is_never_nothing_and_grams_are_within_half_a_step(
            @ForAll("quantities") Quantity quantity, @ForAll("factors") RationalNumber factor) {
        WeighedLine line = scaled(quantity, factor).lines().get(0);
        Quantity weighed = line.weighed().orElseThrow();
        assertThat(weighed.amount().least().orElseThrow().signum()).isPositive();
        if (quantity.unit() == Unit.GRAM && !factor.equals(Rationals.ONE)) {
            RationalNumber exactGrams =
                    line.exact().orElseThrow().leastInBase(Household.METRIC).orElseThrow();
            RationalNumber step =
                    line.grams().orElseThrow().subtract(exactGrams).abs();
            assertThat(step.doubleValue()).isLessThanOrEqualTo(exactGrams.doubleValue() < 0.5 ? 1.0 : 0.5);
        }
    }

    /** The bound is stated by the measure that is used: half its smallest step, and the step itself for next to nothing. */
    @Property(tries = 1000)
    void rounding_is_within_half_a_step_of_the_measure_used(
            @ForAll("quantities") Quantity quantity, @ForAll("factors") RationalNumber factor) {
        WeighedLine line = scaled(quantity, factor).lines().get(0);
        Quantity weighed = line.weighed().orElseThrow();
        if (factor.equals(Rationals.ONE)) {
            return;
        }
        double exact = line.exact().orElseThrow().dimension() == weighed.dimension()
                ? base(line.exact().orElseThrow())
                : base(weighed) / (1 + line.error().orElseThrow().doubleValue());
        double step = step(weighed);
        double off = Math.abs(base(weighed) - exact);
        assertThat(off).isLessThanOrEqualTo((exact < step ? step : step / 2) + 1e-9);
        assertThat(line.error().orElseThrow().doubleValue()).isCloseTo((base(weighed) - exact) / exact, within(1e-9));
    }

    private static double base(Quantity quantity) {
        return quantity.leastInBase(Household.METRIC).orElseThrow().doubleValue();
    }

    /** The largest step between two amounts that the measure can show, in its base unit. */
    private static double step(Quantity weighed) {
        double value = weighed.amount().least().orElseThrow().doubleValue();
        double steps =
                switch (weighed.unit()) {
                    case GRAM, MILLILITRE -> 1;
                    case KILOGRAM, LITRE -> 0.001;
                    case TEASPOON -> 0.125;
                    case TABLESPOON -> 0.5;
                    case CUP -> 0.25;
                    case OUNCE -> value < 4 ? 0.125 : 0.25;
                    case POUND -> value < 2 ? 1.0 / 64 : 1.0 / 32;
                    case EACH -> value < 5 ? 0.5 : 1;
                    default -> throw new IllegalStateException("no step of " + weighed.unit());
                };
        return Quantity.of(Rationals.of(new BigDecimal(steps)), weighed.unit())
                .leastInBase(Household.METRIC)
                .orElseThrow()
                .doubleValue();
    }

    @Property(tries = 300)
    void an_amount_there_and_back_in_another_unit_is_exact(
            @ForAll("quantities") Quantity quantity, @ForAll Unit other, @ForAll Household household) {
        if (other.dimension() == quantity.dimension()) {
            assertThat(quantity.in(other, household).in(quantity.unit(), household))
                    .isEqualTo(quantity);
        }
    }

    @Property(tries = 100)
    void scaling_by_one_changes_nothing(@ForAll("quantities") Quantity quantity) {
        ScaledRecipe same = scaled(quantity, Rationals.ONE);
        assertThat(same.lines().get(0).weighed()).contains(quantity);
        assertThat(same.warnings()).isEmpty();
    }

    @Provide
    Arbitrary<Quantity> quantities() {
        Arbitrary<Unit> units = Arbitraries.of(
                Unit.GRAM,
                Unit.KILOGRAM,
                Unit.MILLILITRE,
                Unit.TEASPOON,
                Unit.TABLESPOON,
                Unit.CUP,
                Unit.OUNCE,
                Unit.EACH);
        return Combinators.combine(amounts(), units).as(Quantity::of);
    }

    /** From 1/8 to 9: two of them after each other stay within what a batch may be. */
    @Provide
    Arbitrary<RationalNumber> factors() {
        return Combinators.combine(
                        Arbitraries.longs().between(6, 54), Arbitraries.longs().between(6, 48))
                .as((dividend, divisor) -> Rationals.of(dividend, divisor));
    }

    /** Amounts from far below a scale's step to far above a kitchen's. */
    @Provide
    Arbitrary<RationalNumber> amounts() {
        return Combinators.combine(
                        Arbitraries.longs().between(1, 5000),
                        Arbitraries.longs().between(1, 48))
                .as((dividend, divisor) -> Rationals.of(dividend, divisor));
    }
}
