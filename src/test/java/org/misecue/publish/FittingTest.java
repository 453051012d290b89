package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

class FittingTest {

    private static final Place PLACE = Place.of("recipe.md");
    private static final String GOES_ON = "… the list goes on in the written recipe.";

    private final Draft draft = new Draft(Map.ofEntries(
            Map.entry("title", "Title"),
            Map.entry("makes", ""),
            Map.entry("summary", "Soft and 🍐."),
            Map.entry("figures", Map.of("tin", "", "oven", "180 °C", "times", "", "other-batch", "")),
            Map.entry("ingredients", ingredients("175 g (¾ cup) butter")),
            Map.entry("allergens", Map.of("sentences", List.of(Map.of("sentence", "Contains: eggs, milk.")))),
            Map.entry("unsaid", Map.of("lines", List.of(Map.of("line", "3 eggs")))),
            Map.entry("offers", Map.of("lines", List.of(Map.of("line", "instead of butter: 150 g oil")))),
            Map.entry("method", method("Beat. Beat more.", "Bake. Cool.")),
            Map.entry("chapters", Map.of("entries", List.of(Map.of("time", "0:00", "name", "Introduction")))),
            Map.entry("url", "https://example.org"),
            Map.entry("label", Labels.in(java.util.Locale.ENGLISH).forTemplates())));

    private final Fitting.Shorter shorter =
            new Fitting.Shorter(ingredients("175 g butter"), method("Beat.", "Bake."), GOES_ON);

    private static Map<String, Object> ingredients(String butter) {
        return Map.of(
                "parts",
                List.of(
                        Map.of("heading", "", "lines", List.of(Map.of("line", butter), Map.of("line", "3 eggs"))),
                        Map.of(
                                "heading",
                                "For the top",
                                "lines",
                                List.of(Map.of("line", "5 g salt"), Map.of("line", "20 g demerara sugar")))),
                "goes-on",
                "");
    }

    private static Map<String, Object> method(String one, String two) {
        return Map.of(
                "other-batch",
                "",
                "steps",
                List.of(Map.of("number", "1", "text", one), Map.of("number", "2", "text", two)));
    }

    private static String text(Draft draft) {
        return Describer.tidy(PublishTemplates.standard().description().fill(draft.names()));
    }

    private Fitting fitted(int limit) {
        return Fitting.of(draft, shorter, FittingTest::text, limit, PLACE);
    }

    @Test
    void what_is_missed_least_goes_first() {
        assertThat(fitted(text(draft).length()).leftOut()).isEmpty();
        assertThat(fitted(text(draft).length() - 1).leftOut())
                .containsExactly("all but the first sentence of each step");
        assertThat(fitted(150).leftOut())
                .containsExactly(
                        "all but the first sentence of each step",
                        "the method",
                        "the second measure of each line",
                        "the summary",
                        "oven, tin and times",
                        "the chapters",
                        "the substitutions said in the film",
                        "the list of amounts not said in the film",
                        "the address of the recipe's page");
    }

    @Test
    void the_ingredients_go_last_and_the_allergens_never() {
        Fitting fitting = fitted(120);

        assertThat(fitting.text()).isEqualTo("""
                Title

                Ingredients
                • 175 g butter
                • 3 eggs
                … the list goes on in the written recipe.

                Allergens
                Contains: eggs, milk.
                """);
        assertThat(fitting.leftOut()).last().isEqualTo("2 ingredient lines");
    }

    @Test
    void characters_are_counted_in_units_of_utf_16_of_which_no_box_counts_more() {
        String text = text(draft);

        assertThat(text.codePointCount(0, text.length())).isEqualTo(text.length() - 1);
        assertThat(fitted(text.length()).leftOut()).isEmpty();
        assertThat(fitted(text.codePointCount(0, text.length())).leftOut()).isNotEmpty();
    }

    @Property(tries = 400)
    void the_text_never_exceeds_its_limit_and_every_line_stays_whole(@ForAll @IntRange(min = 1, max = 420) int limit) {
        Optional<String> text = textWithin(limit);
        Set<String> whole = new HashSet<>();
        Stream.of(
                        draft,
                        draft.with("method", shorter.method()),
                        draft.with("ingredients", shorter.ingredients()),
                        draft.withIngredients(1, GOES_ON))
                .forEach(each -> whole.addAll(text(each).lines().toList()));

        assertThat(text.map(String::length).orElse(0)).isLessThanOrEqualTo(limit);
        assertThat(text.stream().flatMap(String::lines)).isSubsetOf(whole);
        assertThat(text.isPresent()).isEqualTo(limit >= "Title\n\nAllergens\nContains: eggs, milk.\n".length());
    }

    private Optional<String> textWithin(int limit) {
        try {
            return Optional.of(fitted(limit).text());
        } catch (BadInput tooSmall) {
            return Optional.empty();
        }
    }
}
