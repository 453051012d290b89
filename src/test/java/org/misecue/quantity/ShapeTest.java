package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapeTest {

    private static final List<String> REGEXES =
            List.of("\\h*\\(", "\\h+(?:to|or)\\h+", "[½x]\\h*g?", "(?![\\p{L}])", "\\h*\\bof\\b\\h*|\\h+", "(?!to)t?o");

    @ParameterizedTest
    @CsvSource(
            ignoreLeadingAndTrailingWhitespace = false,
            value = {"'\\h*\\(',' x'", "'\\h*\\(','x'", "'\\h+(?:to|or)\\h+',' a'", "'between\\h+','eggs'", "'tin',''"})
    void one_or_two_signs_tell_that_a_pattern_cannot_stand_here(String regex, String text) {
        assertThat(Shape.inAnyCase(regex).mayStandAt(text, 0)).isFalse();
    }

    @Property
    void a_shape_never_misses_what_its_pattern_matches(
            @ForAll @StringLength(max = 4) @Chars({' ', '(', 't', 'o', 'R', 'f', '½', 'g', 'x', '\u00a0'})
                    String text) {
        for (String regex : REGEXES) {
            for (int at = 0; at <= text.length(); at++) {
                if (Pattern.compile(regex, Pattern.CASE_INSENSITIVE)
                        .matcher(text.substring(at))
                        .lookingAt()) {
                    assertThat(Shape.inAnyCase(regex).mayStandAt(text, at)).isTrue();
                }
            }
        }
    }
}
