package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class AllergenListsTest {

    private final Pantry pantry = Pantry.standard();

    /** Sources: the head of the table. */
    @ParameterizedTest(name = "{0}: EU “{1}”, US “{2}”, AU/NZ “{3}”")
    @CsvFileSource(resources = "allergen-lists.csv", numLinesToSkip = 1)
    void each_list_has_its_own_word(String key, String eu, String us, String auNz) {
        Substance substance = Substance.ofKey(key).orElseThrow();
        assertThat(substance.named(AllergenList.EU)).isEqualTo(words(eu));
        assertThat(substance.named(AllergenList.US)).isEqualTo(words(us));
        assertThat(substance.named(AllergenList.AU_NZ)).isEqualTo(words(auNz));
    }

    private static List<String> words(String cell) {
        return cell == null ? List.of() : List.of(cell.split("; "));
    }

    @Test
    void every_one_of_the_fourteen_has_a_substance_and_the_us_names_nine() {
        assertThat(Arrays.stream(Substance.values()).flatMap(one -> one.allergen().stream()))
                .contains(Allergen.values());
        assertThat(Arrays.stream(Substance.values())
                        .flatMap(one -> one.named(AllergenList.US).stream())
                        .map(word -> word.replaceFirst(":.*", ""))
                        .distinct())
                .containsExactlyInAnyOrder(
                        "milk",
                        "eggs",
                        "fish",
                        "crustacean shellfish",
                        "tree nuts",
                        "peanuts",
                        "wheat",
                        "soybeans",
                        "sesame");
    }

    /** What carries what: check values of section 4 and common knowledge of the trade; from memory, the label wins. */
    @ParameterizedTest(name = "{0} carries {1}, check {2}")
    @CsvFileSource(resources = "traps.csv", numLinesToSkip = 1)
    void compound_foods_do_not_hide_what_they_carry(String written, String contains, String check) {
        Ingredient ingredient = pantry.find(written).orElseThrow();
        assertThat(keys(ingredient.contains())).isEqualTo(cells(contains));
        assertThat(keys(ingredient.check())).containsAll(cells(check));
    }

    private static Set<String> keys(Set<Substance> substances) {
        return substances.stream().map(Substance::key).collect(Collectors.toSet());
    }

    private static Set<String> cells(String cell) {
        return cell == null
                ? Set.of()
                : Stream.of(cell.split(" ")).map(key -> key.replace('-', ' ')).collect(Collectors.toSet());
    }

    @Test
    void a_name_is_declared_in_the_words_of_the_list() {
        assertThat(pantry.declared("plain flour", AllergenList.AU_NZ).words()).isEqualTo("contains wheat, gluten");
        assertThat(pantry.declared("rye flour", AllergenList.US).words())
                .isEqualTo("nothing known to the pantry: the label tells");
        assertThat(pantry.declared("marzipan", AllergenList.EU).words())
                .isEqualTo("contains nuts: almonds; check the label: eggs");
        assertThat(pantry.declared("pine nuts", AllergenList.EU).words()).isEqualTo("check the label: nuts");
    }

    @Test
    void what_the_pantry_does_not_know_is_never_clean() {
        assertThat(pantry.declared("fairy dust", AllergenList.EU)).isEqualTo(new Declared.Unknown("fairy dust"));
        assertThat(Arrays.stream(AllergenList.values())
                        .flatMap(list -> Stream.concat(
                                Stream.of(pantry.declared("fairy dust", list).words()),
                                pantry.all().stream().map(one -> pantry.declared(one.name(), list)
                                        .words()))))
                .allMatch(words -> words.contains("label") || words.contains("contains"))
                .noneMatch(words -> words.matches(".*(?i)\\b(free|none|safe)\\b.*"));
    }
}
