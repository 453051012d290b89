package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.notice.BadInput;

class PantryFileTest {

    private static final String GOOD = "- name: rye flour\n  aisle: baking\n  source: from memory\n";

    private static InputStream stream(String yaml) {
        return new ByteArrayInputStream(yaml.getBytes(StandardCharsets.UTF_8));
    }

    private static List<Ingredient> read(String yaml) {
        return PantryFile.read("pantry.yaml", stream(yaml));
    }

    @Test
    void a_row_needs_no_more_than_name_aisle_and_source() {
        assertThat(read(GOOD)).singleElement().satisfies(row -> {
            assertThat(row.name()).isEqualTo("rye flour");
            assertThat(row.weights()).isEmpty();
            assertThat(row.allergens()).isEmpty();
        });
    }

    /** The bad row is the second one, on line 4. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "- {name: oats, aisle: baking}                                       | “source” must be a text.",
                "- {aisle: baking, source: me}                                       | “name” must be a text.",
                "- {name: oats, aisle: baking, source: me, color: blue}"
                        + " | unknown key “color”; known are aisle, also, check, chilled, contains, grams, heard, name,"
                        + " source, weighed.",
                "- {name: oats, aisle: baking, source: me, also: oat}                | “also” must be a list such as [one, other].",
                "- {name: oats, aisle: baking, source: me, also: [oat, 7]}           | “also” must hold texts only; quote 7.",
                "- {name: oats, aisle: baking, source: me, chilled: maybe}           | “chilled” must be true or false.",
                "- {name: oats, aisle: baking, source: me, grams: {cup: 81}}         | “weighed” must be a text.",
                "- {name: oats, aisle: baking, source: me, weighed: me, grams: {cup: -1}}"
                        + " | “grams” must hold numbers above zero, and cup is -1.",
                "- {name: oats, aisle: baking, source: me, weighed: me, grams: {pint: 1}}"
                        + " | “grams” are of a cup, tbsp, tsp, stick or each, not pint.",
                "- {name: oats, aisle: baking, source: me, contains: [wheat]}"
                        + " | “wheat” is not one of the EU's fourteen allergens: [gluten, crustaceans, eggs, fish,"
                        + " peanuts, soybeans, milk, nuts, celery, mustard, sesame, sulphites, lupin, molluscs].",
                "- {name: oats, aisle: baking, source: me, also: [Rye Flours]}"
                        + " | “Rye Flours” is a name of “rye flour” already.",
                "- just words                                                        | expected a row of keys and values.",
            })
    void a_bad_row_stops_the_reading_with_its_line(String row, String sentence) {
        assertThatThrownBy(() -> read(GOOD + row))
                .isInstanceOf(BadInput.class)
                .hasMessage("pantry.yaml:4: " + sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {"name: oats", "", "- {name: oats", "- [", "\t- name: x", "- name: 'x"})
    void what_is_no_list_of_rows_is_refused(String yaml) {
        assertThatThrownBy(() -> read(yaml)).isInstanceOf(BadInput.class).hasMessageStartingWith("pantry.yaml");
    }

    @Test
    void every_row_of_the_pantry_that_comes_with_the_program_names_its_source() {
        Set<String> keys =
                Set.of("name", "also", "heard", "grams", "weighed", "contains", "check", "chilled", "aisle", "source");
        InputStream in = Objects.requireNonNull(Pantry.class.getResourceAsStream("pantry.yaml"));
        assertThat(YamlRows.read("pantry.yaml", in, keys))
                .hasSameSizeAs(Pantry.standard().all())
                .allSatisfy(row -> assertThat(row.text("source"))
                        .matches("EU 1169/2011 Annex II: .+|from memory; the label wins|common practice, no source"));
    }

    @Test
    void lead_times_are_as_strict() {
        assertThatThrownBy(() -> LeadTimeRule.read(
                        "lead-times.yaml",
                        stream("- {job: warm, for: [any], words: [soft], do: x, ahead: 2 hours, why: y., source: me}")))
                .isInstanceOf(BadInput.class)
                .hasMessage("lead-times.yaml:1: “ahead” must be a duration such as PT30M or PT2H.");
    }

    @Test
    void lead_time_rules_name_ingredients_of_the_pantry() {
        InputStream in = Objects.requireNonNull(Pantry.class.getResourceAsStream("lead-times.yaml"));
        Set<String> names =
                Pantry.standard().all().stream().map(Ingredient::name).collect(Collectors.toSet());
        assertThat(LeadTimeRule.read("lead-times.yaml", in))
                .hasSizeGreaterThan(15)
                .allSatisfy(rule -> assertThat(rule.ingredients())
                        .isNotEmpty()
                        .allMatch(name -> names.contains(name) || name.equals("any") || name.equals("chilled")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "- &a [*a]",
                "- ? [a, b]\n  : c",
                "- a\n---\n- b",
                "\u0000\u0001",
                "- {name: x, name: y, aisle: z, source: s}",
                "%YAML 9.9\n---\n- a",
                "- !!java.io.File x",
                "{{{{[[[[",
            })
    void strange_yaml_is_rows_or_bad_input(String yaml) {
        try {
            assertThat(read(yaml)).isNotEmpty();
        } catch (BadInput e) {
            assertThat(e).hasMessageStartingWith("pantry.yaml").hasMessageEndingWith(".");
        }
    }
}
