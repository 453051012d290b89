package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Allergen;
import org.misecue.quantity.QuantityReader;

/** Labels, numbers and units in French; the recipe keeps its own language. */
class FrenchLabelsTest {

    private final Labels french = Labels.in(Locale.FRENCH);

    @Test
    void a_french_description_reads_like_this() throws IOException {
        Goldens.check(
                "pear-cake-french.txt",
                Describer.describe(
                                TestEditions.pearCake(),
                                DescriptionSettings.usual().withLanguage(Locale.FRENCH))
                        .text());
    }

    /** Plurals of French begin at two; signs and the decimal comma: CLDR, by ICU4J. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    87.5 g      | 87,5 g
                    1200 g      | 1,2 kg
                    1½ cups     | 1½ tasse
                    2 cups      | 2 tasses
                    2–3 tbsp    | 2–3 c. à s.
                    ¼ tsp       | ¼ c. à c.
                    2 pinches   | 2 pincées
                    1½ sticks   | 1½ bâtonnet
                    about 40 g  | environ 40 g
                    """)
    void amounts_are_written_as_in_french(String english, String expected) {
        String text = Amounts.in(french)
                .text(new QuantityReader().read(english).orElseThrow().quantity());

        assertThat(text.replace('\u00a0', ' ')).isEqualTo(expected);
    }

    /** Annex II of Regulation (EU) 1169/2011 names fourteen; from memory. */
    @Test
    void every_allergen_has_a_french_name() {
        assertThat(Arrays.stream(Allergen.values()).map(french::allergenInFull))
                .containsExactly(
                        "céréales contenant du gluten",
                        "crustacés",
                        "œufs",
                        "poissons",
                        "arachides",
                        "soja",
                        "lait",
                        "fruits à coque",
                        "céleri",
                        "moutarde",
                        "sésame",
                        "sulfites",
                        "lupin",
                        "mollusques");
    }

    @Test
    void the_page_tells_the_language_of_labels_and_that_of_the_recipe() {
        String page = RecipePage.html(
                TestEditions.pearCake(),
                DescriptionSettings.usual().withLanguage(Locale.FRENCH),
                PublishTemplates.standard());

        assertThat(page).contains("<html lang=\"fr\">", "<h1 lang=\"en-GB\">", "<h2>Ingrédients</h2>");
    }
}
