package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.quantity.Rationals;

class ShareWordsTest {

    @ParameterizedTest
    @CsvSource({
        "half, 1, 2",
        "half the, 1, 2",
        "the other half of, 1, 2",
        "a third of, 1, 3",
        "two-thirds of, 2, 3",
        "Two thirds, 2, 3",
        "three quarters, 3, 4",
        "¾ of, 3, 4",
        "a fifth of the, 1, 5",
    })
    void fractions_in_words_and_signs(String words, long top, long below) {
        assertThat(ShareWords.fraction(words)).contains(Rationals.of(top, below));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "the rest", "most of", "some", "the remaining"})
    void anything_else_states_no_share(String words) {
        assertThat(ShareWords.fraction(words)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"half of the remaining, true", "half the rest of, true", "the remaining half, false", "half, false"})
    void a_fraction_of_what_is_left_is_told_from_one_of_the_whole(String words, boolean ofWhatIsLeft) {
        assertThat(ShareWords.ofWhatIsLeft(words)).isEqualTo(ofWhatIsLeft);
    }
}
