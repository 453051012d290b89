package org.misecue.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.notice.BadInput;

/** What narrows a search down; the talk and its speakers are invented. */
class NarrowingTest {

    @TempDir
    Path episode;

    @BeforeEach
    void build() {
        Set<Topic> butter =
                Set.of(new Topic(Topic.Kind.INGREDIENT, "unsalted butter"), new Topic(Topic.Kind.ALLERGEN, "milk"));
        Set<Topic> tahini =
                Set.of(new Topic(Topic.Kind.INGREDIENT, "tahini"), new Topic(Topic.Kind.ALLERGEN, "sesame seeds"));
        MomentIndex.build(
                episode,
                List.of(
                        said(10, 1, "Ada Fenn", "whisk the butter").about(butter),
                        said(40, 1, "Mo", "whisk on and on"),
                        said(75, 2, "Mo", "whisk this in").about(tahini),
                        said(3700, 2, "Ada Fenn", "whisk once more"),
                        Passage.ingredient(
                                        "2 tbsp tahini", 2, "main.vtt", Duration.ofSeconds(70), Duration.ofSeconds(90))
                                .about(tahini)),
                List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "whisk step:2,               75 3700",
        "whisk speaker:mo,           40 75",
        "whisk speaker:\"ada fenn\", 10 3700",
        "whisk speaker:Ada,          10 3700",
        "whisk from:0:40 to:1:20,    40 75",
        "whisk to:0:40,              10",
        "whisk from:1:00:00,         3700",
        "'\"whisk from:1:00:00\"', 3700",
        "ingredient:butter,          10",
        "ingredient:tahini whisk,    75",
        "allergen:sesame,            75 70",
        "allergen:Milk,              10",
        "speaker:mo step:1,          40",
        "allergen:mustard,           ''",
    })
    void only_what_it_names_is_found(String query, String seconds) {
        assertThat(found(query).stream()
                        .sorted((a, b) -> a.kind() == b.kind()
                                ? a.at().compareTo(b.at())
                                : a.kind().compareTo(b.kind()))
                        .map(hit -> String.valueOf(hit.at().toSeconds()))
                        .collect(Collectors.joining(" ")))
                .isEqualTo(seconds);
    }

    @Test
    void nothing_found_of_an_allergen_is_no_proof() {
        FindResult result = MomentIndex.find(episode, "allergen:mustard", 5);
        assertThat(FindText.of(result, false)).contains("no proof that there is none");
        assertThat(FindJson.of(result)).contains("\"caution\" : \"");
        assertThat(MomentIndex.find(episode, "whisk", 5).caution()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"whisk from:12", "to:1:99", "from:5.30 whisk"})
    void a_time_that_cannot_be_read_says_how_it_is_written(String query) {
        assertThatThrownBy(() -> found(query))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("expected a time such as");
    }

    @ParameterizedTest
    @ValueSource(strings = {"speaker:", "from:here", "whisk: step", "allergen: x", "ingredient:\"\""})
    void what_is_no_narrowing_is_words(String query) {
        assertThat(Narrowing.of(query).narrowing()).isEqualTo(Narrowing.NONE);
        assertThat(Narrowing.of(query).words()).isEqualTo(query);
    }

    private List<Hit> found(String query) {
        return MomentIndex.find(episode, query, 10).hits();
    }

    private static Passage said(int start, int step, String speaker, String text) {
        return Talk.said(start, text, step, Optional.of(speaker));
    }
}
