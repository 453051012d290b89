package org.misecue.scale;

import static org.assertj.core.api.Assertions.assertThat;

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
        return Combinators.combine(factors(), units).as(Quantity::of);
    }

    @Provide
    Arbitrary<RationalNumber> factors() {
        return Combinators.combine(
                        Arbitraries.longs().between(1, 5000),
                        Arbitraries.longs().between(1, 48))
                .as((dividend, divisor) -> Rationals.of(dividend, divisor));
    }
}
