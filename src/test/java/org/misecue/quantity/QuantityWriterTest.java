package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class QuantityWriterTest {

    @ParameterizedTest(name = "{0} {1} is written “{2}” and said “{3}”")
    @CsvFileSource(resources = "written-and-said.csv", useHeadersInDisplayName = false, numLinesToSkip = 1)
    void writes_and_says_a_quantity(String amount, String unit, String written, String said) {
        Quantity quantity = Quantities.of(amount, unit);
        assertThat(QuantityWriter.text(quantity)).isEqualTo(written);
        assertThat(QuantityWriter.words(quantity)).isEqualTo(said);
    }

    @Test
    void what_is_not_stated_stays_in_its_own_words() {
        Quantity splash = new Quantity(new Amount.Unstated("a splash"), Unit.PINCH);
        assertThat(QuantityWriter.text(splash)).isEqualTo("a splash");
        assertThat(QuantityWriter.words(splash)).isEqualTo("a splash");
    }

    @Test
    void a_hedge_is_kept_and_an_empty_one_is_about() {
        Amount seventy = Amount.of(70);
        assertThat(QuantityWriter.text(new Quantity(new Amount.Approximate(seventy, "roughly"), Unit.GRAM)))
                .isEqualTo("roughly 70 g");
        assertThat(QuantityWriter.words(new Quantity(new Amount.Approximate(seventy, ""), Unit.GRAM)))
                .isEqualTo("about seventy grams");
    }

    @Test
    void is_the_same_in_every_locale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(QuantityWriter.text(Quantities.of("1234.5", "g"))).isEqualTo("1234.5 g");
            assertThat(QuantityWriter.words(Quantities.of("2.25", "g"))).isEqualTo("two point two five grams");
        } finally {
            Locale.setDefault(before);
        }
    }
}
