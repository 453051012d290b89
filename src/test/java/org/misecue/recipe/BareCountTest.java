package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.manuscript.Line;

class BareCountTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "250 butter",
                "250 unsalted butter, softened",
                "2 flour",
                "200 q caster sugar",
                "1 honey",
                "Butter 120",
                "125 eggs"
            })
    void a_number_without_a_unit_is_doubted_where_no_pieces_can_be_meant(String line) {
        assertThat(BareCount.isDoubtful(parsed(line), new Larder(Pantry.standard())))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3 eggs",
                "1 lemon",
                "4 leaves of gelatine",
                "6 cardamom pods",
                "16 walnut halves",
                "2 bananas, mashed",
                "250 g butter",
                "1 stick butter",
                "2 tins plums",
                "1 egg white",
                "48 hazelnuts",
                "2 cinnamon sticks",
                "1 vanilla pod",
                "butter, for greasing",
                "a pinch of salt"
            })
    void pieces_and_measures_are_not_doubted(String line) {
        assertThat(BareCount.isDoubtful(parsed(line), new Larder(Pantry.standard())))
                .isFalse();
    }

    private static IngredientLine parsed(String text) {
        return new IngredientLineParser(Pantry.standard()).parse(new Line(1, Line.Kind.ITEM, 0, text, false));
    }
}
