package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BeginningsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "fold(?:ed|ing)?; fo",
                "(?:pre-?heat|heat|set) (?:the )?oven; pr he se",
                "\\bline (?:a|the)\\b; li",
                "(?<![\\p{L}-])(?:rest|roll(?:ed)? out); re ro",
                "(?:to |and )?cool\\b(?!ed); to an co",
                "fr(?:y|ied)\\b(?! pan); fr",
                "(?:finely )?ICE; fi ic",
                "[½¼]+ cup; ''",
            })
    void a_pattern_may_begin_with_these_letters_and_no_others(String pattern, String letters) {
        assertThat(Beginnings.of(Pattern.compile(pattern, Pattern.CASE_INSENSITIVE)))
                .containsExactlyInAnyOrder(letters.isBlank() ? new String[0] : letters.split(" "));
    }
}
