package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class AllergenTest {

    /** Source: Annex II to Regulation (EU) 1169/2011 (a copy of the annex; FARRP's summary). */
    @Test
    void are_the_fourteen_of_annex_ii_in_its_order() {
        assertThat(Arrays.stream(Allergen.values()).map(Allergen::label))
                .containsExactly(
                        "cereals containing gluten",
                        "crustaceans",
                        "eggs",
                        "fish",
                        "peanuts",
                        "soybeans",
                        "milk",
                        "nuts",
                        "celery",
                        "mustard",
                        "sesame",
                        "sulphites",
                        "lupin",
                        "molluscs");
    }
}
