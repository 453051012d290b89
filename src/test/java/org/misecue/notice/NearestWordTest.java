package org.misecue.notice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;

class NearestWordTest {

    @Property(tries = 200)
    void the_distance_is_a_distance(
            @ForAll @AlphaChars @StringLength(max = 8) String one,
            @ForAll @AlphaChars @StringLength(max = 8) String other) {
        assertThat(NearestWord.distance(one, other)).isEqualTo(NearestWord.distance(other, one));
        assertThat(NearestWord.distance(one, other) == 0).isEqualTo(one.equals(other));
        assertThat(NearestWord.distance(one, other)).isLessThanOrEqualTo(Math.max(one.length(), other.length()));
    }

    @Property(tries = 100)
    void a_word_with_one_letter_lost_is_found_again(@ForAll("lost") String typed) {
        assertThat(NearestWord.of(typed, List.of("narration", "footage", "household")))
                .isPresent();
    }

    @net.jqwik.api.Provide
    net.jqwik.api.Arbitrary<String> lost() {
        return net.jqwik.api.Arbitraries.of("narration", "footage", "household")
                .flatMap(word -> net.jqwik.api.Arbitraries.integers()
                        .between(0, word.length() - 1)
                        .map(at -> word.substring(0, at) + word.substring(at + 1)));
    }
}
