package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;

/** The substances are those of Annex II to Regulation (EU) 1169/2011; what carries them is common knowledge, no source. */
class AllergenLineTest {

    @ParameterizedTest
    @CsvFileSource(resources = "allergen-lines.csv", delimiter = '|')
    void the_words_that_name_an_allergen_are_in_capitals(String line, String published, String contains, String check) {
        AllergenLine allergens =
                AllergenLine.of(line, line, Optional.empty(), Emphasis.CAPITALS::of, Labels.in(Locale.ENGLISH));
        AllergenSummary summary = new AllergenSummary(Labels.in(Locale.ENGLISH));
        summary.add("it", allergens);

        assertThat(allergens.text()).isEqualTo(published);
        assertThat(summary.lines(false).stream().filter(one -> one.startsWith("Contains: ")))
                .isEqualTo(contains == null ? List.of() : List.of("Contains: " + contains + "."));
        assertThat(summary.lines(false).stream().filter(one -> one.startsWith("Check the label")))
                .isEqualTo(check == null ? List.of() : List.of("Check the label of: it (" + check + ")."));
    }

    @Test
    void what_only_the_pantry_knows_stands_in_brackets_behind_the_name() {
        Ingredient teabread = Pantry.standard()
                .with("pantry.yaml", "- {name: teabread, contains: [eggs, wheat]}")
                .find("teabread")
                .orElseThrow();

        AllergenLine line = AllergenLine.of(
                "stale teabread, cubed",
                "stale teabread",
                Optional.of(teabread),
                Emphasis.CAPITALS::of,
                Labels.in(Locale.ENGLISH));

        assertThat(line.text()).isEqualTo("stale teabread (GLUTEN, EGGS), cubed");
    }

    @Test
    void stars_mark_the_same_words() {
        assertThat(AllergenLine.of(
                                "plain flour, sifted",
                                "plain flour",
                                Optional.empty(),
                                Emphasis.STARS::of,
                                Labels.in(Locale.ENGLISH))
                        .text())
                .isEqualTo("plain *flour* (*wheat*), sifted");
    }

    @Test
    void the_allergens_stand_in_the_order_of_the_annex() {
        AllergenSummary summary = new AllergenSummary(Labels.in(Locale.ENGLISH));
        for (String line : List.of("sesame seeds", "milk", "hazelnuts", "eggs", "plain flour", "oats")) {
            summary.add(
                    line,
                    AllergenLine.of(line, line, Optional.empty(), Emphasis.CAPITALS::of, Labels.in(Locale.ENGLISH)));
        }

        assertThat(summary.lines(false))
                .first()
                .isEqualTo("Contains: wheat and oats (gluten), eggs, milk, hazelnuts (nuts), sesame.");
    }
}
