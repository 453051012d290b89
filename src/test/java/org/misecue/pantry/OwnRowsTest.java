package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;

class OwnRowsTest {

    private static Pantry own(String yaml) {
        return Pantry.standard().with("pantry.yaml", yaml);
    }

    @Test
    void a_row_of_a_known_name_changes_what_it_gives_and_keeps_the_rest() {
        Pantry pantry = own("- name: plain flour\n  grams: {cup: 130}\n");
        Ingredient flour = pantry.find("all-purpose flour").orElseThrow();
        assertThat(flour.weights()).singleElement().satisfies(cup -> {
            assertThat(cup.grams()).isEqualTo(Rationals.of(130));
            assertThat(cup.source()).isEqualTo("own pantry");
        });
        assertThat(flour.contains()).containsExactly(Substance.WHEAT);
        assertThat(flour.aisle()).isEqualTo("baking");
        assertThat(flour.source()).isEqualTo("own pantry");
        assertThat(pantry.notes()).isEmpty();
        assertThat(pantry.all()).hasSameSizeAs(Pantry.standard().all());
    }

    @Test
    void one_cup_of_its_own_stands_for_all_spoons() {
        assertThat(own("- {name: icing sugar, grams: {cup: 110}}")
                        .find("icing sugar")
                        .orElseThrow()
                        .weights())
                .extracting(Weight::unit)
                .containsExactly(Unit.CUP);
        assertThat(own("- {name: butter, grams: {stick: 110}}")
                        .find("butter")
                        .orElseThrow()
                        .weights())
                .extracting(Weight::unit)
                .containsExactlyInAnyOrder(Unit.STICK, Unit.CUP, Unit.TABLESPOON);
    }

    @Test
    void a_spread_of_its_own_needs_no_new_grams() {
        Weight cup = own("- {name: plain flour, spread: {cup: [120, 130]}}")
                .find("flour")
                .orElseThrow()
                .weights()
                .get(0);
        assertThat(cup.grams()).isEqualTo(Rationals.of(125));
        assertThat(cup.spread()).isEqualTo(new Spread(Rationals.of(120), Rationals.of(130), "own pantry"));
    }

    @Test
    void a_new_row_adds() {
        Ingredient drops = own("- {name: orchard drops, also: [drops], keep: fridge, contains: [sulphites]}")
                .find("50 g orchard drops")
                .orElseThrow();
        assertThat(drops.chilled()).isTrue();
        assertThat(drops.contains()).containsExactly(Substance.SULPHITES);
        assertThat(drops.aisle()).isEqualTo("other");
    }

    @Test
    void allergens_add_to_those_that_are_known() {
        Ingredient chocolate = own("- {name: dark chocolate, contains: [hazelnut]}")
                .find("dark chocolate")
                .orElseThrow();
        assertThat(chocolate.contains()).containsExactly(Substance.HAZELNUT);
        assertThat(chocolate.check()).contains(Substance.MILK, Substance.SOYBEANS);
    }

    @Test
    void only_replaces_drops_allergens_and_says_which() {
        Pantry pantry = own("- name: margarine\n  replaces: true\n  check: [soybeans]\n");
        assertThat(pantry.find("margarine").orElseThrow().check()).containsExactly(Substance.SOYBEANS);
        assertThat(pantry.notes())
                .extracting(Note::toString)
                .containsExactly("pantry.yaml:1: “margarine” no longer counts milk, for the row says “replaces: true”;"
                        + " see that the packet's label says so too.");
    }

    @Test
    void a_name_of_another_row_moves_with_its_allergens() {
        Pantry pantry = own("- name: house mix\n  also: [strong flour]\n  contains: [rye]\n");
        Ingredient mix = pantry.find("strong flour").orElseThrow();
        assertThat(mix.name()).isEqualTo("house mix");
        assertThat(mix.contains()).containsExactly(Substance.WHEAT, Substance.RYE);
        assertThat(pantry.find("bread flour").orElseThrow().names()).doesNotContain("strong flour");
        assertThat(pantry.notes())
                .extracting(Note::toString)
                .containsExactly(
                        "pantry.yaml:1: “strong flour” was a name of “bread flour” and now means “house mix”.");
    }

    @Test
    void a_moved_title_keeps_its_habits() {
        Pantry pantry = own("- name: house butter\n  also: [butter]\n");
        assertThat(pantry.find("butter").orElseThrow().name()).isEqualTo("house butter");
        assertThat(pantry.find("butter").orElseThrow().contains()).containsExactly(Substance.MILK);
        assertThat(pantry.leadTimes("butter", "softened")).hasSize(1);
        assertThat(pantry.find("unsalted butter").orElseThrow().name()).isEqualTo("butter");
    }

    @Test
    void a_longer_name_that_says_less_than_before_is_told() {
        assertThat(own("- {name: crunchy flour}").notes())
                .extracting(Note::toString)
                .containsExactly("pantry.yaml:1: “crunchy flour” counted as “plain flour” before, with wheat, which the"
                        + " own row does not name; add it under “contains” if it is in it.");
    }

    @Test
    void a_second_file_lies_over_the_first() {
        Pantry pantry = own("- {name: plum dust, grams: {tsp: 2}, contains: [sulphites]}")
                .with("pantry.yaml", "- {name: plum dust, grams: {tsp: 3}}");
        Ingredient dust = pantry.find("plum dust").orElseThrow();
        assertThat(dust.weights()).extracting(Weight::grams).containsExactly(Rationals.of(3));
        assertThat(dust.contains()).containsExactly(Substance.SULPHITES);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "- {name: oats, gram: {cup: 80}} | unknown key “gram”; did you mean “grams”?",
                "- {name: oats, replaces: maybe} | “replaces” must be true or false.",
                "- {also: [oats]}                | “name” must be a text.",
                "- {name: dew}                   | “dew” is a name of “dew” already.",
            })
    void a_bad_row_stops_the_reading_with_its_line(String row, String sentence) {
        assertThatThrownBy(() -> own("- {name: dew}\n" + row))
                .isInstanceOf(BadInput.class)
                .hasMessage("pantry.yaml:2: " + sentence);
    }
}
