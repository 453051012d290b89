package org.misecue.pantry;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.misecue.notice.BadInput;

/** Whatever stands in somebody's pantry.yaml: a pantry, or one sentence. */
class OwnPantryProperties {

    private static final Pantry STANDARD = Pantry.standard();

    private static void isPantryOrSentence(byte[] bytes) {
        try {
            Pantry pantry = STANDARD.with("p.yaml", new java.io.ByteArrayInputStream(bytes));
            assertThat(pantry.all()).isNotEmpty();
        } catch (BadInput refused) {
            assertThat(refused.getMessage()).startsWith("p.yaml").matches("(?s).*[.?]");
            assertThat(refused.getMessage().lines()).hasSize(1);
        }
    }

    @Property
    void any_bytes(@ForAll byte[] bytes) {
        isPantryOrSentence(bytes);
    }

    @Property
    void any_text(@ForAll String text) {
        isPantryOrSentence(text.getBytes(StandardCharsets.UTF_8));
    }

    @Property(tries = 3000)
    void anything_that_looks_like_rows(@ForAll("almostRows") String yaml) {
        isPantryOrSentence(yaml.getBytes(StandardCharsets.UTF_8));
    }

    /** Never fewer allergens than before, unless a row says so in so many words. */
    @Property(tries = 300)
    void no_row_loses_an_allergen_by_chance(@ForAll("almostRows") String yaml) {
        try {
            Pantry pantry = STANDARD.with("p.yaml", yaml.replace("replaces", "check"));
            for (String name : List.of("plain flour", "butter", "eggs", "walnuts", "tahini")) {
                assertThat(pantry.find(name).orElseThrow().allergens())
                        .containsAll(STANDARD.find(name).orElseThrow().allergens());
            }
        } catch (BadInput refused) {
            assertThat(refused).hasMessageStartingWith("p.yaml");
        }
    }

    @Provide
    Arbitrary<String> almostRows() {
        Arbitrary<String> key = Arbitraries.of(
                "name",
                "also",
                "heard",
                "kind",
                "grams",
                "weighed",
                "spread",
                "contains",
                "check",
                "keep",
                "aisle",
                "beware",
                "source",
                "replaces",
                "nmae",
                "<<");
        Arbitrary<String> value = Arbitraries.of(
                "butter",
                "plain flour",
                "[flour, eggs]",
                "[walnuts]",
                "{cup: 120}",
                "{cup: [1, 2]}",
                "[milk]",
                "true",
                "fridge",
                "flour",
                "&a [*a]",
                "*b",
                "",
                "~",
                "!!int x",
                "'",
                "\"\\x\"",
                "{a: {b: {c: d}}}",
                "-1",
                "| \n",
                "[tahini, tahini]",
                "{each: 1e99}",
                "[[",
                "\u0000");
        Arbitrary<String> pair = Combinators.combine(key, value).as((k, v) -> k + ": " + v);
        Arbitrary<String> row = pair.list().ofMinSize(1).ofMaxSize(4).map(pairs -> "- " + String.join("\n  ", pairs));
        return row.list().ofMinSize(1).ofMaxSize(3).map(rows -> String.join("\n", rows) + "\n");
    }
}
