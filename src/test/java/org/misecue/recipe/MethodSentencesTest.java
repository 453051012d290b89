package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class MethodSentencesTest {

    static Stream<MethodSentences.Row> odd() {
        return MethodSentences.odd("sentences");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("odd")
    void the_sentences_that_the_rules_were_built_for_are_understood(MethodSentences.Row row) {
        assertThat(row.understood()).isEqualTo(row);
    }

    /**
     * Floors, no goals. Of the first file both halves have been looked at since; of the second only the odd one, so that
     * its even half says what to expect of sentences never seen.
     */
    @ParameterizedTest(name = "{0}, {1} half: {2}")
    @CsvSource({"sentences, even, 61", "more-sentences, odd, 56", "more-sentences, even, 38"})
    void so_many_are_understood_wholly(String file, String half, int measured) {
        Stream<MethodSentences.Row> rows = half.equals("even") ? MethodSentences.even(file) : MethodSentences.odd(file);
        assertThat(rows.filter(row -> row.understood().equals(row)).count()).isGreaterThanOrEqualTo(measured);
    }
}
