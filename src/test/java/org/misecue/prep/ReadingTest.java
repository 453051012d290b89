package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.quantity.Unit.EACH;
import static org.misecue.quantity.Unit.GRAM;
import static org.misecue.quantity.Unit.TABLESPOON;
import static org.misecue.quantity.Unit.TEASPOON;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Rationals;

class ReadingTest {

    private static Bowl firstBowl(TestKitchen kitchen, String scale) {
        return PrepPlanner.plan(
                        kitchen.asWritten(),
                        Pantry.standard(),
                        PrepSettings.standard().withScaleStep(Rationals.of(scale)))
                .bowls()
                .get(0);
    }

    private static TestKitchen kitchen(String grams) {
        return new TestKitchen("Bake")
                .component("")
                .line(grams, GRAM, "caster sugar", "")
                .step("Stir in the sugar.", "stir", 2, 0, "0/0");
    }

    @ParameterizedTest
    @CsvSource({
        "175, 1, empty + 175 g ± 0.5 g",
        "175, 5, empty + 175 g ± 2.5 g",
        "175, 0.1, empty + 175 g ± 0.05 g",
        "7.5, 0.1, empty + 7.5 g ± 0.05 g",
        "1250, 2, empty + 1250 g ± 1 g",
    })
    void one_weighing_is_off_by_half_a_mark_of_the_scale_at_most(String grams, String scale, String words) {
        assertThat(firstBowl(kitchen(grams), scale).reading())
                .get()
                .extracting(Reading::words)
                .isEqualTo(words);
    }

    @Test
    void each_thing_weighed_into_a_bowl_adds_its_half_mark() {
        TestKitchen dryMix = new TestKitchen("Bake")
                .component("")
                .line("200", GRAM, "plain flour", "")
                .line("30", GRAM, "cocoa powder", "")
                .line("4", GRAM, "fine salt", "")
                .step("Sift the flour, cocoa and salt together.", "sift", 2, 0, "0/0", "0/1", "0/2");
        assertThat(firstBowl(dryMix, "1").reading())
                .get()
                .extracting(Reading::words)
                .isEqualTo("empty + 234 g ± 1.5 g");
    }

    @Test
    void spoons_count_with_the_weight_of_the_pantry_and_the_reading_says_about() {
        // USDA SR26 19335: granulated sugar, 200 g in a US cup of 236.6 ml, so 12.7 g in 15 ml.
        TestKitchen spoons = new TestKitchen("Bake")
                .component("")
                .line("2", TABLESPOON, "granulated sugar", "")
                .step("Stir in the sugar.", "stir", 2, 0, "0/0");
        assertThat(firstBowl(spoons, "1").reading())
                .get()
                .extracting(Reading::words)
                .isEqualTo("empty + about 25 g");
    }

    @Test
    void pieces_and_what_nobody_knows_the_weight_of_have_no_reading() {
        TestKitchen eggs = new TestKitchen("Bake")
                .component("")
                .line("2", EACH, "large eggs", "")
                .step("Beat in the eggs.", "beat", 2, 0, "0/0");
        assertThat(firstBowl(eggs, "1").reading()).isEmpty();
        TestKitchen unknown = new TestKitchen("Bake")
                .component("")
                .line("2", TEASPOON, "xyzzy crumbs", "")
                .step("Scatter with the crumbs.", "scatter", 2, 0, "0/0");
        assertThat(firstBowl(unknown, "1").reading()).isEmpty();
    }
}
