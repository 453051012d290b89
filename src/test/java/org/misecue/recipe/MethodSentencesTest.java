package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MethodSentencesTest {

    static Stream<MethodSentences.Row> odd() {
        return MethodSentences.odd();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("odd")
    void the_sentences_that_the_rules_were_built_for_are_understood(MethodSentences.Row row) {
        assertThat(row.understood()).isEqualTo(row);
    }
}
