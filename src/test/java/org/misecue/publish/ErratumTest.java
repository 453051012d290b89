package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.compare.Comparer;
import org.misecue.compare.Finding;
import org.misecue.compare.Findings;
import org.misecue.episode.Publication;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.scale.Batch;
import org.misecue.scale.ScaleRules;
import org.misecue.scale.ScaledRecipe;
import org.misecue.scale.Scaler;
import org.misecue.spoken.Speech;

class ErratumTest {

    private static final String BEFORE = """
            # Pear buns

            Makes 12

            ## For the dough

            - 400 g spelt flour
            - 75 g caster sugar
            - 200 ml water

            ## For the glaze

            - 50 g caster sugar

            ## Method

            1. Knead the flour, sugar and water.
            2. Heat the oven to 200 °C and bake for 25 minutes.
            3. Boil the sugar for the glaze.
            """;

    private static final String SAID = "so the dough has four hundred grams of spelt flour and seventy five grams of "
            + "sugar and we bake that for twenty five minutes";

    @TempDir
    private Path folder;

    @Test
    void says_nothing_where_nothing_has_changed() throws IOException {
        assertThat(erratum(BEFORE).text()).isEqualTo("Nothing that was published has changed.\n");
    }

    @Test
    void names_the_right_amount_the_wrong_one_and_the_moments_of_the_film() throws IOException {
        assertThat(erratum(BEFORE.replace("75 g caster", "100 g caster")).text())
                .isEqualTo("""
                Correction, 26 November 2026: it is 100 g caster sugar (dough), not 75 g. The film gives another figure at 0:05: please go by the one written here.

                To cover in the film
                    0:05  narration.vtt: “has four hundred grams of spelt flour and seventy five grams of sugar and we bake that for twenty”
                          → “100 g caster sugar”
                """.replace("narration.vtt", source()));
    }

    @Test
    void sends_readers_to_their_copies_where_the_film_says_nothing() throws IOException {
        assertThat(erratum(BEFORE.replace("50 g caster", "60 g caster")).text())
                .isEqualTo("Correction, 26 November 2026: it is 60 g caster sugar (glaze), not 50 g. "
                        + "Please change it wherever you have copied the recipe.\n");
    }

    @Test
    void corrects_oven_and_time() throws IOException {
        assertThat(erratum(BEFORE.replace("200 °C", "180 °C").replace("25 min", "30 min"))
                        .sentences()
                        .get(0))
                .isEqualTo("Correction, 26 November 2026: oven: 180 °C, not 200 °C; "
                        + "bake: 30 minutes, not 25 minutes.");
    }

    @Test
    void names_an_allergen_first_that_was_left_out() throws IOException {
        Erratum erratum = erratum(BEFORE.replace("- 200 ml water\n", "- 200 ml water\n- 20 g sesame seeds\n"));

        assertThat(erratum.sentences())
                .first()
                .isEqualTo(
                        "ALLERGENS: it contains SESAME, which was not said before; read the labels of what you use.");
        assertThat(erratum.sentences()).element(1).asString().contains("20 g sesame seeds (dough) was left out");
    }

    @Test
    void names_another_nut_though_nuts_were_named() throws IOException {
        String nuts = BEFORE.replace("- 200 ml water\n", "- 200 ml water\n- 50 g hazelnuts\n");
        Publication then = released(recipe(nuts));
        Publication now = released(recipe(nuts.replace("- 50 g hazelnuts\n", "- 50 g hazelnuts\n- 20 g pistachios\n")));

        assertThat(Erratum.of(then, now, List.of()).sentences().get(0))
                .isEqualTo(
                        "ALLERGENS: it contains PISTACHIOS, which was not said before; read the labels of what you use.");
    }

    @Test
    void never_says_that_an_allergen_is_gone() throws IOException {
        String text = erratum(BEFORE.replace("- 400 g spelt flour\n", "- 400 g rice flour\n"))
                .text();

        assertThat(text)
                .contains("400 g rice flour (dough) was left out")
                .contains("400 g spelt flour (dough) does not belong in it");
        assertThat(text.toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("free")
                .doesNotContain("no gluten");
    }

    private String source() {
        return Speech.narration(SAID).source();
    }

    private Erratum erratum(String after) throws IOException {
        Recipe now = recipe(after);
        List<Finding> findings = Findings.of(
                        Comparer.compare(now, List.of(Speech.narration(SAID)), Pantry.standard()),
                        List.of(),
                        now,
                        Pantry.standard())
                .groups()
                .stream()
                .flatMap(group -> group.findings().stream())
                .toList();
        return Erratum.of(released(recipe(BEFORE)), released(now), findings);
    }

    private Recipe recipe(String text) throws IOException {
        return RecipeReader.read(Files.writeString(folder.resolve("recipe.md"), text), "recipe.md", Pantry.standard());
    }

    private static Publication released(Recipe recipe) {
        ScaledRecipe batch =
                Scaler.scale(recipe, new Batch.Factor(Rationals.ONE), ScaleRules.standard(), Pantry.standard());
        return Released.of(batch, Pantry.standard(), LocalDate.of(2026, 11, 26), "Nell", "");
    }
}
