package org.misecue.spoken;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;

class QuantityListenerTest {

    /** How people put amounts, and what is no amount: from listening, no source. */
    @ParameterizedTest(name = "{0}: {1} {2} {3}")
    @CsvFileSource(resources = "quantities.csv", numLinesToSkip = 1)
    void hears_one_amount(String said, String amount, String unit, String aside) {
        List<SpokenQuantity> all = new QuantityListener(Speech.stream(said)).all();
        assertThat(all).hasSize(1);
        SpokenQuantity quantity = all.get(0);
        assertThat(quantity.amount().least()).contains(Rationals.of(amount));
        assertThat(quantity.unit().map(Unit::code).orElse("")).isEqualTo(unit == null ? "" : unit);
        assertThat(quantity.aside().map(Aside::reason).orElse("")).isEqualTo(aside == null ? "" : aside);
    }

    @ParameterizedTest(name = "\"{0}\" is hedged")
    @CsvSource({
        "about seventy grams",
        "seventy grams or so",
        "just under seventy grams",
        "seventyish grams",
        "roughly seventy grams",
        "seventy grams give or take"
    })
    void hears_hedges(String said) {
        assertThat(new QuantityListener(Speech.stream(said)).all())
                .singleElement()
                .matches(quantity -> quantity.amount().hedged());
    }

    @ParameterizedTest(name = "\"{0}\" holds no amount")
    @CsvSource({
        "this one is lovely",
        "the light one",
        "in a cup",
        "one of those",
        "some sugar",
        "in a jar",
        "the twenty first of march",
        "add a third egg"
    })
    void leaves_the_rest_alone(String said) {
        assertThat(new QuantityListener(Speech.stream(said)).all()).isEmpty();
    }

    @Property(tries = 500)
    void never_fails_on_any_words_and_amounts_never_overlap(@ForAll @Size(max = 30) List<String> words) {
        String text = String.join(" ", words).replace('|', ' ').strip();
        WordStream stream = Speech.stream(text.isEmpty() ? "nothing" : text);
        int end = 0;
        for (SpokenQuantity quantity : new QuantityListener(stream).all()) {
            assertThat(quantity.start()).isGreaterThanOrEqualTo(end);
            end = quantity.end();
        }
        assertThat(end).isLessThanOrEqualTo(stream.size());
    }
}
