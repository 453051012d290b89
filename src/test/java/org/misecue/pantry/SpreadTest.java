package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;

class SpreadTest {

    private static Weighed weighed(String from, String to, Unit unit, String name) {
        Quantity quantity = new Quantity(Amount.between(Rationals.of(from), Rationals.of(to)), unit);
        return Weighing.weighed(quantity, Pantry.standard().find(name).orElseThrow(), Household.US_CUSTOMARY)
                .orElseThrow();
    }

    private static String range(Spread spread) {
        return Rationals.rounded(spread.low(), 1).toPlainString() + "–"
                + Rationals.rounded(spread.high(), 1).toPlainString();
    }

    /**
     * Plain flour 100 sifted, 145 scooped: a conversion article. Icing sugar sifted 100, brown sugar loose 145, raisins
     * packed 165: USDA SR26 19336, 19334, 09298. The others by their kind: common practice, no source.
     */
    @ParameterizedTest(name = "{0} {1} of {2}: {3} g")
    @CsvSource({
        "1, CUP,        plain flour,       100–145",
        "2, CUP,        plain flour,       200–290",
        "1, TABLESPOON, plain flour,       6.3–9.1",
        "1, CUP,        icing sugar,       100–130",
        "1, TABLESPOON, icing sugar,       6.7–8.7",
        "1, CUP,        light brown sugar, 145–230",
        "1, CUP,        raisins,           140–165",
        "1, CUP,        milk,              239.1–248.9",
        "1, CUP,        caster sugar,      190–210",
        "1, CUP,        bread flour,       109.6–158.9",
        "1, CUP,        walnuts,           99.5–134.6",
        "1, EACH,       lemon juice,       30–60",
    })
    void a_measure_tells_how_far_kitchens_differ(String count, Unit unit, String name, String range) {
        assertThat(range(weighed(count, count, unit, name).spread())).isEqualTo(range);
    }

    @Test
    void of_a_range_it_goes_from_the_least_of_the_lower_end_to_the_most_of_the_upper() {
        assertThat(range(weighed("2", "3", Unit.CUP, "plain flour").spread())).isEqualTo("200–435");
    }

    @Test
    void a_mass_has_none() {
        Weighed weighed = weighed("250", "250", Unit.GRAM, "plain flour");
        assertThat(range(weighed.spread())).isEqualTo("250–250");
        assertThat(weighed.source()).isEqualTo("weighed");
    }

    @Test
    void every_spread_holds_its_weight_and_names_its_source() {
        assertThat(Pantry.standard().all())
                .flatExtracting(Ingredient::weights)
                .hasSizeGreaterThan(250)
                .allSatisfy(weight -> {
                    assertThat(weight.spread().low().compareTo(weight.grams())).isNotPositive();
                    assertThat(weight.spread().high().compareTo(weight.grams())).isNotNegative();
                    assertThat(weight.spread().low().signum()).isPositive();
                    assertThat(weight.spread().source())
                            .matches(
                                    ".*(from memory|USDA SR26 \\d{5}.*|common practice, no source|conversion article)");
                });
    }
}
