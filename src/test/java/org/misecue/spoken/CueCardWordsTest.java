package org.misecue.spoken;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityReader;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.WrittenQuantity;

/**
 * What a cue card gives to say is understood as the written quantity. Two parts of the program that share no rule check
 * each other: one reads print, the other listens.
 */
class CueCardWordsTest {

    @ParameterizedTest(name = "{0} is said “{1}” and heard as the same")
    @CsvSource(delimiter = '|', textBlock = """
            125 g            | one hundred and twenty-five grams
            1.2 kg           | one point two kilograms
            45-50 minutes    | forty-five to fifty minutes
            2-3 tbsp         | two to three tablespoons
            1/2 tsp          | half a teaspoon
            1 1/2 tsp        | one and a half teaspoons
            3/4 tsp          | three quarters of a teaspoon
            2 1/4 cups       | two and a quarter cups
            180 °C           | one hundred and eighty degrees Celsius
            gas mark 4       | gas mark four
            1 hour           | one hour
            105 ml           | one hundred and five millilitres
            1 kg             | one kilogram
            """)
    void is_heard_as_it_is_written(String print, String words) {
        Quantity written = new QuantityReader()
                .read(print + " of it")
                .map(WrittenQuantity::quantity)
                .orElseThrow();
        assertThat(QuantityWriter.words(written)).isEqualTo(words);
        assertThat(new QuantityListener(Speech.stream(words)).all())
                .singleElement()
                .satisfies(heard -> assertThat(heard.quantity())
                        .hasValueSatisfying(quantity -> assertThat(quantity.sameSize(written, Household.METRIC))
                                .isTrue()));
    }
}
