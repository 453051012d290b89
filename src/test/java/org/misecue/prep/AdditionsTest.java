package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class AdditionsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "additions.csv", delimiter = '|')
    void what_goes_in_by_parts_has_a_bowl_for_each(String sentence, String ingredient, int additions) {
        assertThat(Additions.of(sentence, ingredient)).isEqualTo(additions);
    }
}
