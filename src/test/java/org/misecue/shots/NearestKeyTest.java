package org.misecue.shots;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestKeyTest {

    /** kitten–sitting is the usual example of Levenshtein's distance. */
    @ParameterizedTest
    @CsvSource({"kitten, sitting, 3", "see, see, 0", "'', setup, 5", "sond, sound, 1"})
    void letters_to_change_are_counted(String one, String other, int distance) {
        assertThat(NearestKey.distance(one, other)).isEqualTo(distance);
    }

    @Test
    void a_word_far_from_all_has_no_nearest() {
        assertThat(NearestKey.of("lens", List.of("see", "sound"))).isEmpty();
        assertThat(NearestKey.of("sound-note", List.of("see", "sound"))).isEmpty();
    }
}
