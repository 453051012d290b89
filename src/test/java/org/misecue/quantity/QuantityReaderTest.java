package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import tech.units.indriya.function.RationalNumber;

class QuantityReaderTest {

    private final QuantityReader reader = new QuantityReader();

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(
            resources = "written-amounts.csv",
            delimiter = '|',
            ignoreLeadingAndTrailingWhitespace = false,
            quoteCharacter = '\0',
            emptyValue = "",
            nullValues = "\0")
    void amounts_are_read_as_a_cook_reads_them(
            String text, String amount, String unit, String alternative, String packing, String rest) {
        Optional<WrittenQuantity> found = reader.read(text);
        if ("-".equals(amount)) {
            assertThat(found).isEmpty();
            return;
        }
        WrittenQuantity written = found.orElseThrow(() -> new AssertionError("not read: " + text));
        assertThat(shown(written.quantity())).isEqualTo(amount(amount) + " " + unit);
        assertThat(written.alternative().map(QuantityReaderTest::shown))
                .isEqualTo(alternative == null || alternative.isEmpty() ? Optional.empty() : Optional.of(alternative));
        assertThat(written.packing()).isEqualTo(packing == null ? "" : packing);
        assertThat(text.substring(written.end())).isEqualTo(rest == null ? "" : rest);
    }

    @Test
    void refused_figures_are_told_from_words() {
        assertThat(reader.beginsWithFigures("0 g flour")).isTrue();
        assertThat(reader.beginsWithFigures("-5 g flour")).isTrue();
        assertThat(reader.beginsWithFigures("½½ tsp salt")).isTrue();
        assertThat(reader.beginsWithFigures("golden syrup")).isFalse();
    }

    private static String amount(String written) {
        String hedge = written.startsWith("~") ? "~" : "";
        String plain = written.substring(hedge.length());
        return plain.matches("[\\d.]+") ? hedge + fraction(Rationals.of(plain)) : written;
    }

    private static String shown(Quantity quantity) {
        return shown(quantity.amount()) + " " + quantity.unit().code();
    }

    private static String shown(Amount amount) {
        if (amount instanceof Amount.Exact exact) {
            return fraction(exact.value());
        }
        if (amount instanceof Amount.Range range) {
            return fraction(range.from()) + "-" + fraction(range.to());
        }
        if (amount instanceof Amount.Approximate about) {
            return "~" + shown(about.about());
        }
        return ((Amount.Unstated) amount).words();
    }

    private static String fraction(RationalNumber value) {
        return Rationals.isWhole(value)
                ? value.getDividend().toString()
                : value.getDividend() + "/" + value.getDivisor();
    }
}
