package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Collections;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;

class PantryTest {

    private final Pantry pantry = Pantry.standard();

    @ParameterizedTest(name = "“{0}” is {1}")
    @CsvFileSource(resources = "found.csv", numLinesToSkip = 1)
    void finds_what_a_recipe_line_names(String written, String ingredient) {
        assertThat(pantry.find(written).map(Ingredient::name)).contains(ingredient);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "½", "edible paper", "buttery", "eggshell blue", "×", "12"})
    void what_is_not_known_is_not_guessed(String written) {
        assertThat(pantry.find(written)).isEmpty();
    }

    @ParameterizedTest(name = "heard “{0}” is {1}")
    @CsvSource({
        "strong white flower, bread flour",
        "self raising flower, self-raising flour",
        "flower, plain flour",
        "currents, currants",
        "creme fresh, crème fraîche",
        "cream fresh, crème fraîche",
        "caster, caster sugar",
        "by carb, bicarbonate of soda",
        "egg yoke, egg yolk",
        "wall nuts, walnuts",
        "butter, butter",
        "Greek yoghurt, yoghurt",
    })
    void knows_what_recognisers_write(String words, String ingredient) {
        assertThat(pantry.heardAs(words).map(Ingredient::name)).contains(ingredient);
    }

    @Test
    void what_was_heard_must_be_the_whole_name() {
        assertThat(pantry.heardAs("some butter please")).isEmpty();
        assertThat(pantry.heardAs("")).isEmpty();
    }

    @Test
    void every_name_of_every_ingredient_leads_back_to_it() {
        assertThat(pantry.all()).hasSizeGreaterThan(400).allSatisfy(ingredient -> {
            assertThat(pantry.heardAs(ingredient.name())).contains(ingredient);
            assertThat(ingredient.names())
                    .allSatisfy(name -> assertThat(pantry.heardAs(name)).contains(ingredient));
        });
    }

    @Test
    void nothing_is_both_carried_and_only_to_be_checked() {
        assertThat(pantry.all())
                .allMatch(ingredient -> Collections.disjoint(ingredient.allergens(), ingredient.checkLabel()));
    }

    /** The source says for each line whether Annex II names it or it is from memory; on set, the label wins. */
    @ParameterizedTest(name = "{0} carries {1}, check {2} ({3})")
    @CsvFileSource(resources = "carries.csv", numLinesToSkip = 1)
    void knows_what_carries_which_allergen(String written, String contains, String check, String source) {
        Ingredient ingredient = pantry.find(written).orElseThrow();
        assertThat(names(ingredient.allergens())).as(source).containsAll(words(contains));
        assertThat(names(ingredient.checkLabel())).as(source).containsAll(words(check));
    }

    /** Not on the EU's list; source: from memory. Such rows may still ask to check the label. */
    @ParameterizedTest
    @ValueSource(strings = {"desiccated coconut", "chestnuts", "pine nuts", "buckwheat flour", "polenta", "rice"})
    void what_is_not_on_the_eu_list_carries_none_of_it_by_nature(String written) {
        assertThat(pantry.find(written).orElseThrow().allergens()).isEmpty();
    }

    /** Source: weight table of USDA SR release 26, by food number. */
    @ParameterizedTest(name = "{0}: USDA SR26 food {5}")
    @CsvFileSource(resources = "weights.csv", numLinesToSkip = 1)
    void weighs_household_measures_as_published(
            String written, String cup, String tbsp, String tsp, String each, String food) {
        Ingredient ingredient = pantry.find(written).orElseThrow();
        assertThat(grams(ingredient, Unit.CUP)).isEqualTo(decimal(cup));
        assertThat(grams(ingredient, Unit.TABLESPOON)).isEqualTo(decimal(tbsp));
        assertThat(grams(ingredient, Unit.TEASPOON)).isEqualTo(decimal(tsp));
        assertThat(grams(ingredient, Unit.EACH)).isEqualTo(decimal(each));
        assertThat(ingredient.weights()).allMatch(weight -> weight.source().startsWith("USDA SR26 " + food));
    }

    @Test
    void every_weight_says_where_it_comes_from() {
        assertThat(pantry.all()).flatExtracting(Ingredient::weights).allSatisfy(weight -> {
            assertThat(weight.source())
                    .matches("USDA SR26 \\d{5}.*|as .*(USDA SR26 \\d{5}.*|no source)"
                            + "|common practice, no source|from memory.*");
            assertThat(weight.grams().signum()).isPositive();
        });
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvFileSource(resources = "ahead.csv", numLinesToSkip = 1)
    void knows_what_to_start_ahead(String ingredient, String preparation, String jobs) {
        String found = pantry
                .leadTimes(ingredient, Optional.ofNullable(preparation).orElse(""))
                .stream()
                .map(job -> job.ahead() + " " + job.what())
                .collect(Collectors.joining("; "));
        assertThat(found).isEqualTo(Optional.ofNullable(jobs).orElse(""));
    }

    @Test
    void an_unknown_ingredient_keeps_its_own_name() {
        assertThat(pantry.leadTimes("sea buckthorn pulp", "thawed"))
                .extracting(LeadTime::what)
                .containsExactly("Take the sea buckthorn pulp out of the freezer and thaw it in the fridge");
    }

    @Test
    void every_lead_time_has_its_reason_and_source() {
        assertThat(pantry.leadTimes("butter", "softened")).singleElement().satisfies(job -> {
            assertThat(job.why()).endsWith(".");
            assertThat(job.source()).isEqualTo("common practice, no source");
        });
    }

    private static Optional<String> grams(Ingredient ingredient, Unit unit) {
        return ingredient.weights().stream()
                .filter(weight -> weight.unit() == unit)
                .map(weight -> Rationals.decimal(weight.grams()).toPlainString())
                .findFirst();
    }

    private static Optional<String> decimal(String text) {
        return Optional.ofNullable(text)
                .map(number -> Rationals.decimal(Rationals.of(number)).toPlainString());
    }

    private static Set<String> names(Set<Allergen> allergens) {
        return allergens.stream()
                .map(one -> one.name().toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Set<String> words(String text) {
        return text == null ? Set.of() : Set.copyOf(Arrays.asList(text.split(" ")));
    }
}
