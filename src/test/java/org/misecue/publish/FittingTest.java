package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

class FittingTest {

    private static final Place PLACE = Place.of("recipe.md");

    private final Draft draft = Draft.empty()
            .with(Draft.Part.TITLE, List.of("Title"))
            .with(Draft.Part.FIGURES, List.of("Oven: 180 °C"))
            .with(
                    Draft.Part.INGREDIENTS,
                    List.of(
                            "Ingredients",
                            "• 175 g (¾ cup) butter",
                            "• 3 eggs",
                            "",
                            "For the top",
                            "• 5 g salt",
                            "• 20 g demerara sugar"))
            .with(Draft.Part.ALLERGENS, List.of("Contains: eggs, milk."))
            .with(Draft.Part.UNSAID, List.of("Not said", "• 3 eggs"))
            .with(Draft.Part.METHOD, List.of("Method", "1. Beat.", "2. Bake."))
            .with(Draft.Part.CHAPTERS, List.of("Chapters", "0:00 Introduction"));
    private final List<String> shorter = List.of(
            "Ingredients", "• 175 g butter", "• 3 eggs", "", "For the top", "• 5 g salt", "• 20 g demerara sugar");

    @Test
    void the_method_goes_first_then_the_second_measures() {
        int all = draft.text().length();

        assertThat(Fitting.of(draft, shorter, all, PLACE).leftOut()).isEmpty();
        assertThat(Fitting.of(draft, shorter, all - 1, PLACE).leftOut()).containsExactly("the method");
        assertThat(Fitting.of(
                                draft,
                                shorter,
                                draft.without(Draft.Part.METHOD).text().length() - 1,
                                PLACE)
                        .leftOut())
                .containsExactly("the method", "the second measure of each line");
    }

    @Test
    void the_ingredients_go_last_and_the_allergens_never() {
        Fitting fitting = Fitting.of(draft, shorter, 110, PLACE);

        assertThat(fitting.draft().text()).isEqualTo("""
                Title

                Ingredients
                • 175 g butter
                • 3 eggs
                … the list goes on in the written recipe.

                Contains: eggs, milk.
                """);
        assertThat(fitting.leftOut()).last().isEqualTo("2 ingredient lines");
    }

    @Property(tries = 400)
    void the_text_never_exceeds_its_limit_and_every_line_stays_whole(@ForAll @IntRange(min = 1, max = 300) int limit) {
        Optional<String> text = fitted(limit);
        Set<String> whole =
                new ArrayList<>(draft.text().lines().toList()).stream().collect(Collectors.toSet());
        whole.addAll(shorter);
        whole.add("… the list goes on in the written recipe.");

        assertThat(text.map(String::length).orElse(0)).isLessThanOrEqualTo(limit);
        assertThat(text.stream().flatMap(String::lines)).isSubsetOf(whole);
        assertThat(text.isPresent()).isEqualTo(limit >= "Title\n\nContains: eggs, milk.\n".length());
    }

    private Optional<String> fitted(int limit) {
        try {
            return Optional.of(Fitting.of(draft, shorter, limit, PLACE).draft().text());
        } catch (BadInput tooSmall) {
            return Optional.empty();
        }
    }
}
