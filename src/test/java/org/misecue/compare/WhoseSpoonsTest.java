package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Speech;

class WhoseSpoonsTest {

    @TempDir
    Path folder;

    private LineVerdict water(String written, String said) throws IOException {
        return water(written, said, Optional.empty());
    }

    private LineVerdict water(String written, String said, Optional<Household> spoons) throws IOException {
        String recipe = "# Jelly\n\n## Ingredients\n\n- " + written + " hot water\n\n## Method\n\n1. Mix.\n";
        Path file = Files.writeString(folder.resolve("recipe.md"), recipe);
        return Comparer.compare(
                        RecipeReader.read(file, "recipe.md"),
                        List.of(Speech.narration(said)),
                        Pantry.standard(),
                        spoons)
                .written()
                .get(0);
    }

    @Test
    void an_amount_that_only_another_country_s_spoon_makes_right_is_for_listening() throws IOException {
        LineVerdict found = water("60 ml", "three tablespoons of hot water");
        assertThat(found.verdict()).isEqualTo(Verdict.DIFFERS);
        assertThat(found.confidence().isLow()).isTrue();
        assertThat(found.reason()).contains("tablespoon of another country");
    }

    @Test
    void the_episode_s_own_spoons_are_meant_where_it_names_them() throws IOException {
        LineVerdict found = water("60 ml", "three tablespoons of hot water", Optional.of(Household.AUSTRALIAN));
        assertThat(found.verdict()).isEqualTo(Verdict.AGREES);
    }

    @Test
    void by_the_speaker_s_own_large_spoon_a_right_amount_for_small_ones_is_for_listening_too() throws IOException {
        LineVerdict found = water("60 ml", "i use australian spoons so four tablespoons of hot water");
        assertThat(found.verdict()).isEqualTo(Verdict.DIFFERS);
        assertThat(found.confidence().isLow()).isTrue();
    }

    @Test
    void an_amount_that_no_spoon_makes_right_differs_for_certain() throws IOException {
        LineVerdict found = water("60 ml", "two tablespoons of hot water");
        assertThat(found.verdict()).isEqualTo(Verdict.DIFFERS);
        assertThat(found.confidence().isLow()).isFalse();
        assertThat(found.reason()).doesNotContain("country");
    }
}
