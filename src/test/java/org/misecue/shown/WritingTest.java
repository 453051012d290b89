package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WritingTest {

    @ParameterizedTest
    @CsvSource({
        "225 g plain flour, 95, true",
        "75g, 95, true",
        "½ lemon, 95, true",
        "The filling, 96, true",
        "Fold, 90, true",
        "225 g plain flour, 50, false",
        "PA, 92, false",
        "BJA, 90, false",
        "a aw s ee, 80, false",
        "4, 91, false",
        "|i_= ~;, 88, false",
        "Bcdfg, 90, false"
    })
    void writing_is_told_from_texture(String text, int sure, boolean writing) {
        ReadLine line = new ReadLine(new Box(0, 0, 100, 20), text, false, sure);

        assertThat(Writing.isWriting(line)).isEqualTo(writing);
    }
}
