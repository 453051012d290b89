package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.StringLength;
import tech.units.indriya.function.RationalNumber;

class QuantityReaderRoundTripTest {

    private final QuantityReader reader = new QuantityReader();

    @Property(tries = 500)
    void what_is_written_is_read_back(@ForAll("quantities") Quantity quantity) {
        String text = QuantityWriter.text(quantity);
        assertThat(reader.read(text)).as(text).hasValueSatisfying(read -> {
            assertThat(read.quantity().sameSize(quantity, Household.METRIC))
                    .as(text)
                    .isTrue();
            assertThat(read.end()).isEqualTo(text.length());
        });
    }

    @Property(tries = 500)
    void any_text_is_read_or_not_but_never_breaks(@ForAll @StringLength(max = 40) String text) {
        Optional<WrittenQuantity> read = reader.read(text);
        assertThat(read.map(WrittenQuantity::end).orElse(0)).isBetween(0, text.length());
    }

    @Provide
    Arbitrary<Quantity> quantities() {
        Arbitrary<Unit> units = Arbitraries.of(
                Unit.GRAM,
                Unit.MILLILITRE,
                Unit.TEASPOON,
                Unit.TABLESPOON,
                Unit.CUP,
                Unit.FLUID_OUNCE,
                Unit.PINT,
                Unit.OUNCE,
                Unit.POUND,
                Unit.STICK,
                Unit.EACH,
                Unit.MINUTE,
                Unit.HOUR,
                Unit.CENTIMETRE,
                Unit.INCH,
                Unit.CELSIUS,
                Unit.FAHRENHEIT);
        Arbitrary<RationalNumber> values = Combinators.combine(
                        Arbitraries.integers().between(1, 400), Arbitraries.of(1, 2, 4))
                .as((dividend, divisor) -> Rationals.of(dividend, divisor));
        Arbitrary<Amount> amounts = Arbitraries.oneOf(
                values.map(Amount::of),
                Combinators.combine(values, values).as(Amount::between),
                values.map(value -> new Amount.Approximate(Amount.of(value), "about")));
        return Combinators.combine(amounts, units).as(Quantity::new);
    }
}
