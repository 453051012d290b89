package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;

class NatureTest {

    @ParameterizedTest
    @CsvSource({
        "strong white bread flour, g, DRY",
        "cream of tartar, tsp, DRY",
        "fine sea salt, tsp, DRY",
        "ground almonds, g, DRY",
        "fast-action dried yeast, g, SOLID",
        "caster sugar, g, SOLID",
        "milk chocolate, g, SOLID",
        "cream cheese, g, SOLID",
        "instant coffee granules, tbsp, SOLID",
        "whole milk, ml, LIQUID",
        "double cream, tbsp, LIQUID",
        "juice of 1 lemon, each, LIQUID",
        "elderflower cordial, ml, LIQUID",
        "large eggs, each, EGG",
        "egg whites, each, EGG",
        "Salt, pinch, DRY",
    })
    void the_last_words_of_a_name_tell_how_it_handles(String ingredient, String unit, Nature nature) {
        assertThat(Nature.of(ingredient, Quantity.of(1, Unit.ofCode(unit).orElseThrow())))
                .isEqualTo(nature);
    }
}
