package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;

class EggMarketTest {

    private static Weighed one(Pantry pantry, String line) {
        return Weighing.weighed(Quantity.of(1, Unit.EACH), pantry.find(line).orElseThrow(), Household.METRIC)
                .orElseThrow();
    }

    /**
     * en-US: USDA SR26 01123 (38, 44, 50, 56, 63 g), 01124 and 01125 (33 and 17 g of a large one). en-GB: calculated, the
     * class by EUR-Lex (58 and 68 g in the middle) less 10.5 % shell, white and yolk 66 and 34 %. en-AU: from memory.
     */
    @ParameterizedTest(name = "{0}: {1} is {2} g, {3}")
    @CsvSource({
        "en-US, 3 large eggs,             50, 50–58",
        "en-US, eggs,                     50, 50–58",
        "en-US, medium eggs,              44, 44–52",
        "en-US, small eggs,               38, 38–46",
        "en-US, extra-large eggs,         56, 56–65",
        "en-US, jumbo eggs,               63, 62–71",
        "en-US, 2 large egg whites,       33, 33–38",
        "en-US, large egg yolk,           17, 17–20",
        "en-GB, 3 large eggs,             61, 55–66",
        "en-GB, 'eggs, beaten',           52, 47–57",
        "en-GB, medium egg,               52, 47–57",
        "en-GB, small eggs,               43, 38–48",
        "en-GB, very large eggs,          70, 64–76",
        "en-GB, large free-range egg yolks, 21, 19–23",
        "en-GB, egg whites,               34, 31–38",
        "de-DE, large eggs,               61, 55–66",
        "en-AU, eggs,                     56, 51–61",
        "en-AU, large eggs,               48, 44–53",
    })
    void weigh_as_they_do_where_the_recipe_is_from(String language, String line, String grams, String range) {
        Weighed egg = one(Pantry.standard().speaking(Locale.forLanguageTag(language)), line);
        assertThat(egg.grams().amount().most()).contains(Rationals.of(grams));
        assertThat(Rationals.rounded(egg.spread().low(), 0) + "–"
                        + Rationals.rounded(egg.spread().high(), 0))
                .isEqualTo(range);
    }

    @Test
    void without_a_language_the_row_of_the_pantry_counts() {
        assertThat(one(Pantry.standard(), "medium eggs").grams().amount().most())
                .contains(Rationals.of(50));
    }

    @Test
    void a_sized_egg_is_still_the_egg() {
        Pantry british = Pantry.standard().speaking(Locale.UK);
        assertThat(british.find("3 large eggs")).isEqualTo(british.heardAs("eggs"));
    }

    @Test
    void an_own_weight_stays() {
        Pantry own = Pantry.standard()
                .with("pantry.yaml", "- {name: egg, grams: {each: 45}, weighed: bantams}")
                .speaking(Locale.UK);
        assertThat(one(own, "large eggs").grams().amount().most()).contains(Rationals.of(45));
    }

    @Test
    void nothing_else_changes_its_weight() {
        assertThat(Pantry.standard()
                        .speaking(Locale.UK)
                        .find("flour")
                        .orElseThrow()
                        .weights())
                .isEqualTo(Pantry.standard().find("flour").orElseThrow().weights());
    }
}
