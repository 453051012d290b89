package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class PantryTest {

    private final Pantry pantry = Pantry.standard();

    @Test
    void holds_at_least_a_hundred_ingredients() {
        assertThat(pantry.all()).hasSizeGreaterThan(100);
        assertThat(pantry.find("unsalted butter, softened"))
                .map(Ingredient::name)
                .contains("butter");
        assertThat(pantry.leadTimes("unsalted butter", "softened")).hasSize(1);
    }
}
