package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** How much of what people write and recognisers hear the pantry knows. */
class CoverageTest {

    private static final Pantry PANTRY = Pantry.standard();

    @ParameterizedTest(name = "{0}: {1}, {2}, {3}, {4}")
    @CsvFileSource(resources = "englishes.csv", numLinesToSkip = 1)
    void four_englishes_name_the_same_ingredient(
            String row, String british, String american, String australian, String indian) {
        assertThat(Stream.of(british, american, australian, indian))
                .allSatisfy(name ->
                        assertThat(PANTRY.find(name).map(Ingredient::name)).contains(row));
    }

    /** Floors that the data has reached; they may only rise. */
    @Test
    void most_rows_have_other_names_and_what_recognisers_write() {
        List<Ingredient> rows = PANTRY.all();
        assertThat(rows).hasSizeGreaterThanOrEqualTo(550);
        assertThat(percent(one -> !one.names().isEmpty())).isGreaterThanOrEqualTo(82);
        assertThat(percent(one -> !one.heard().isEmpty())).isGreaterThanOrEqualTo(67);
        assertThat(percent(one -> !one.names().isEmpty() || !one.heard().isEmpty()))
                .isGreaterThanOrEqualTo(87);
        assertThat(percent(one -> !one.weights().isEmpty())).isGreaterThanOrEqualTo(38);
    }

    private static long percent(Predicate<Ingredient> has) {
        return 100 * PANTRY.all().stream().filter(has).count() / PANTRY.all().size();
    }

    @Provide
    Arbitrary<Ingredient> rows() {
        return Arbitraries.of(PANTRY.all());
    }

    /** A number and a cut around a name change nothing. */
    @Property
    void every_name_finds_its_own_row_on_a_recipe_line(@ForAll("rows") Ingredient row) {
        assertThat(Stream.concat(Stream.of(row.name()), row.names().stream())).allSatisfy(name -> {
            assertThat(PANTRY.find(name)).contains(row);
            assertThat(PANTRY.find("200 g " + name.toUpperCase(java.util.Locale.ROOT) + ", chopped"))
                    .contains(row);
        });
    }

    @Property
    void every_name_that_misleads_says_so(@ForAll("rows") Ingredient row) {
        assertThat(row.beware().keySet()).allSatisfy(name -> assertThat(PANTRY.beware("2 cups " + name + ", sifted"))
                .contains(row.beware().get(name)));
    }

    @Test
    void an_ambiguous_name_is_taken_one_way_and_says_how_else_it_may_be_meant() {
        assertThat(PANTRY.beware("200 g curd").orElseThrow()).contains("Indian English");
        assertThat(PANTRY.beware("corn flour").orElseThrow()).contains("maize");
        assertThat(PANTRY.beware("lemon curd")).isEmpty();
        assertThat(PANTRY.beware("unknown thing")).isEmpty();
    }
}
