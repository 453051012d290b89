package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A pattern that is not tried everywhere finds what it would find everywhere. */
class CuedTest {

    private static final List<Cued> ODD = Stream.of(
                    "\\b(?:oat|tea)s?\\b",
                    "(?<=\\()o(?:pt)?|\\ba\\b",
                    "^(?:a|to)\\h+(?=t)",
                    "(?<![\\p{L}\\d])(?:a\\h+)?(?=\\d|half|t)",
                    "\\h*\\(a+\\)",
                    "t(?!o)|(?<=a )o",
                    "(?:^|[.,]\\h*|\\bto )a",
                    "\\b(?:½|to)",
                    "[to]+(?<=o)\\b",
                    "a{2,3}t?|",
                    "(?:at|a)\\h+$",
                    "\\Qa.t\\E")
            .map(Cued::inAnyCase)
            .toList();

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            ignoreLeadingAndTrailingWhitespace = false,
            value = {
                "\\b(?:tins?|pans?)\\b;pan tin",
                "over\\h?night\\b(?! oats);over",
                "(?:the\\h+)?rest;rest",
                "(?:(?:stir|fold) in|add);add fold in stir in",
                "carameli[sz]e;caramelise caramelize",
                "bak(?:e|ed|ing)\\b(?! tin);bake baking",
                "x+\\d;x",
                "(?<!\\p{L})h(?=our);our",
                "(?:soft)?;",
                "\\p{L}+;",
                "colou*r;colo",
                "\\Qa+b\\E;a+b",
            })
    void these_stand_in_whatever_a_pattern_matches(String regex, String words) {
        assertThat(String.join(" ", Needed.in(regex))).isEqualTo(words == null ? "" : words);
    }

    @Test
    void each_technique_is_found_where_its_pattern_alone_finds_it() {
        List<Wording> sentences = Stream.of(
                        "method/sentences.csv", "method/more-sentences.csv", "settings.csv", "recipe-checks.csv")
                .flatMap(file -> TableFile.rows(CuedTest.class, file).stream())
                .map(Wording::of)
                .toList();
        assertThat(sentences).hasSizeGreaterThan(200);
        for (String row : TableFile.rows("techniques.csv")) {
            for (String phrase : row.split(" \\| ", -1)[1].split(" ; ", -1)) {
                Cued words = Cued.inAnyCase(phrase.strip().replace(" ", "\\h+"));
                sentences.forEach(sentence -> assertThat(places(words.in(sentence)))
                        .as("%s in %s", phrase, sentence.text())
                        .isEqualTo(places(words.pattern()
                                .matcher(sentence.text())
                                .results()
                                .toList())));
            }
        }
    }

    @Property
    void odd_patterns_match_where_they_would_alone(
            @ForAll
                    @StringLength(max = 12)
                    @Chars({' ', '(', ')', 't', 'o', 'A', 'a', '½', '.', '1', '\u00a0', 'ſ', '\u212a'})
                    String text) {
        Wording wording = Wording.of(text);
        for (Cued odd : ODD) {
            Pattern alone = odd.pattern();
            assertThat(places(odd.in(wording)))
                    .as(alone.pattern())
                    .isEqualTo(places(alone.matcher(text).results().toList()));
            assertThat(odd.whole(wording).isPresent())
                    .as(alone.pattern())
                    .isEqualTo(alone.matcher(text).matches());
        }
    }

    @ParameterizedTest
    @CsvSource({"spread the rest,rest,true", "SPREAD IT,spread,true", "spread,spreads,false", "a cake,oven,false"})
    void a_wording_knows_the_letters_that_stand_beside_each_other(String text, String word, boolean may) {
        assertThat(Wording.of(text).mayHold(Wording.places(word))).isEqualTo(may);
    }

    private static List<String> places(List<MatchResult> found) {
        return found.stream().map(each -> each.start() + "-" + each.end()).toList();
    }
}
