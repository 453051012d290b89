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
                "- {name: oats, aisle: baking, source: me, contain: [oats]}"
                        + " | unknown key “contain”; did you mean “contains”?",
                "- {name: oats, aisle: baking, source: me, sprinkled: yes}"
                        + " | unknown key “sprinkled”; known here: name, also, heard, kind, grams, weighed, spread,"
                        + " spread-from, contains, check, keep, aisle, beware, source.",
                "- {name: oats, name: oat, aisle: baking, source: me} | “name” stands here for the second time; keep one of them.",
                "- {name: ½, aisle: baking, source: me} | “name” must have a word in it, and “½” has none.",
                "- {name: oats, aisle: baking, source: me, kind: flours}"
                        + " | “kind” must be one of liquid, syrup, sugar, fat, flour, powder, grain, chopped, piece, soft,"
                        + " other, not “flours”.",
                "- {name: oats, aisle: baking, source: me, keep: shed}"
                        + " | “keep” must be one of cupboard, cool, fridge, freezer, not “shed”.",
                "- {name: oats, aisle: baking, source: me, beware: {wheat: hm}}"
                        + " | “beware” is of a name of this row, and “wheat” is none.",
                "- {name: oats, aisle: baking, source: me, beware: hm}"
                        + " | “beware” must be a mapping such as {cornflour: in the US it is maize flour}.",
                "- {name: oats, aisle: baking, source: me, also: oat}                | “also” must be a list such as [one, other].",
                "- {name: oats, aisle: baking, source: me, also: [oat, 7]}           | “also” must hold texts only; quote 7.",
                "- {name: oats, aisle: baking, source: me, grams: {cup: 81}}         | “weighed” must be a text.",
                "- {name: oats, aisle: baking, source: me, weighed: me, grams: {cup: -1}}"
                        + " | “grams” must hold numbers above zero such as 125 or 4.2, and cup is -1.",
                "- {name: oats, aisle: baking, source: me, weighed: me, grams: {pint: 1}}"
                        + " | “grams” are of a cup, tbsp, tsp, stick or each, not pint.",
                "- {name: oats, aisle: baking, source: me, weighed: me, grams: {cup: 1e9}}"
                        + " | “grams” must hold numbers above zero such as 125 or 4.2, and cup is 1e9.",
                "- {name: oats, aisle: baking, source: me, weighed: me, grams: {cup: 80}, spread: {cup: [85, 90]},"
                        + " spread-from: me} | the “spread” of a cup must hold its grams, 80.",
                "- {name: oats, aisle: baking, source: me, weighed: me, grams: {cup: 80}, spread: {cup: [70, 90]}}"
                        + " | “spread-from” must be a text.",
                "- {name: oats, aisle: baking, source: me, weighed: me, grams: {cup: 80}, spread: {cup: 70}}"
                        + " | “spread” must give the lowest and the highest, such as {cup: [100, 145]}.",
                "- {name: oats, aisle: baking, source: me, spread: {tsp: [1, 2]}, spread-from: me}"
                        + " | “spread” is of a measure that has grams, and tsp has none.",
                "- {name: oats, aisle: baking, source: me, contains: [straw]}"
                        + " | “straw” is not an allergen; known are wheat, rye, barley, oats, gluten, crustaceans, eggs,"
                        + " fish, peanuts, soybeans, milk, almond, hazelnut, walnut, cashew, pecan, brazil nut, pistachio,"
                        + " macadamia, nuts, celery, mustard, sesame, sulphites, lupin, molluscs, pine nut, coconut,"
                        + " chestnut.",
                "- {name: oats, aisle: baking, source: me, also: [Rye Flours]}"
                        + " | “Rye Flours” is a name of “rye flour” already.",
                "- just words                                                        | expected a row of keys and values such as “name: rye flour”.",
            })
    void a_bad_row_stops_the_reading_with_its_line(String row, String sentence) {
        assertThatThrownBy(() -> read(GOOD + row))
                .isInstanceOf(BadInput.class)
                .hasMessage("pantry.yaml:4: " + sentence);
    }

    @ParameterizedTest
    @ValueSource(strings = {"name: oats", "- {name: oats", "- [", "\t- name: x", "- name: 'x"})
    void what_is_no_list_of_rows_is_refused(String yaml) {
        assertThatThrownBy(() -> read(yaml)).isInstanceOf(BadInput.class).hasMessageStartingWith("pantry.yaml");
    }

    @Test
    void every_row_of_the_pantry_that_comes_with_the_program_names_its_source() {
        assertThat(Pantry.standard().all())
                .extracting(Ingredient::source)
                .allMatch(source -> source.matches(
                        "EU 1169/2011 Annex II: .+|from memory; the label wins|common practice, no source"));
    }

    @Test
    void an_error_names_the_line_of_the_key() {
        assertThatThrownBy(() -> read("- name: oats\n  aisle: baking\n  source: me\n  color: blue\n"))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith("pantry.yaml:4: unknown key “color”");
    }

    @Test
    void a_file_of_comments_has_no_rows() {
        assertThat(read("# nothing yet\n")).isEmpty();
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
