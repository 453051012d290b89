package org.misecue.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BeginningsTest {

    private static final Pattern ODD =
            Pattern.compile("(?:a |an? )?(?:be|bead|beads?-)[bd ]c?", Pattern.CASE_INSENSITIVE);

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "fold(?:ed|ing)?; fo fol fold",
                "(?:pre-?heat|heat|set) (?:the )?oven; pr pre preh he hea heat se set",
                "\\bline (?:a|the)\\b; li lin line",
                "(?<![\\p{L}-])(?:rest|roll(?:ed)? out); re res rest ro rol roll",
                "(?:to |and )?cool\\b(?!ed); to an and co coo cool",
                "fr(?:y|ied)\\b(?! pan); fr fry fri frie",
                "(?:finely )?ICED; fi fin fine ic ice iced",
                "[½¼]+ cup; ''",
            })
    void a_pattern_may_begin_with_these_letters_and_no_others(String pattern, String letters) {
        assertThat(Beginnings.of(Pattern.compile(pattern, Pattern.CASE_INSENSITIVE)))
                .containsExactlyInAnyOrder(letters.isBlank() ? new String[0] : letters.split(" "));
    }

    @ParameterizedTest
    @CsvSource({"Folding,0,fold", "in the oven,0,in", "pre-heat,0,pre", "Crème,0,cr", "2 eggs,0,''", "an egg,3,egg"})
    void a_place_begins_with_its_first_letters(String text, int place, String letters) {
        assertThat(Beginnings.at(text, place)).isEqualTo(letters);
    }

    @Property
    void where_a_pattern_matches_its_beginnings_hold_the_letters(
            @ForAll @Chars({'a', 'n', 'b', 'E', 'd', ' ', '-', 'é'}) String text) {
        String letters = Beginnings.at(text, 0);
        if (ODD.matcher(text).lookingAt() && letters.length() > 1) {
            assertThat(Beginnings.of(ODD)).contains(letters);
        }
    }
}
