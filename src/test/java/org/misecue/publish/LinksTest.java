package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;

class LinksTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    Glaze as in https://example.org/glaze?x=1, then cool.  | Glaze as in, then cool.     | Glaze as in (link left out), then cool.
                    Plums (see www.example.org/plums) halved               | Plums (see) halved          | Plums (see (link left out)) halved
                    Flour (http://example.org)                             | Flour                       | Flour ((link left out))
                    Sugar from example.com                                 | Sugar from                  | Sugar from (link left out)
                    javascript:alert(1)//                                  | ''                          | (link left out)
                    1.5 kg plums, e.g. ripe.Not too soft                   | 1.5 kg plums, e.g. ripe.Not too soft | 1.5 kg plums, e.g. ripe.Not too soft
                    Bake: 20 minutes                                       | Bake: 20 minutes            | Bake: 20 minutes
                    """)
    void an_address_goes_or_is_told_or_stays(String text, String dropped, String noted) {
        assertThat(Links.DROP.in(text, "(link left out)")).isEqualTo(dropped);
        assertThat(Links.NOTE.in(text, "(link left out)")).isEqualTo(noted);
        assertThat(Links.KEEP.in(text, "(link left out)")).isEqualTo(text);
    }

    @Property(tries = 300)
    void what_is_dropped_leaves_no_address(@ForAll String before, @ForAll String after) {
        String text = Links.DROP.in(SafeText.line(before) + " https://example.org/a/b?c#d " + SafeText.line(after), "");

        assertThat(text).doesNotContain("example.org");
    }

    @Test
    void the_producer_is_told_where_an_address_was() {
        Recipe recipe = new Recipe(
                "Plum cake",
                List.of(TestRecipes.component("", "20 g plums, from https://example.org/plums", "30 g sugar")),
                List.of(TestRecipes.step(1, "Mix. The rest is on example.com.")),
                List.of(),
                List.of(),
                "recipe.md");
        Edition edition =
                Edition.of(TestRecipes.asWritten(recipe), Pantry.standard()).with(TestEditions.everywhere());

        Description safe = Describer.describe(edition, DescriptionSettings.usual());
        Description kept =
                Describer.describe(edition, DescriptionSettings.usual().withLinks(Links.KEEP));

        assertThat(safe.text()).doesNotContain("example.");
        assertThat(safe.notes())
                .extracting(note -> note.place().toString())
                .containsExactly("recipe.md:5", "recipe.md:20");
        assertThat(kept.text())
                .contains("from https://example.org/plums")
                .endsWith("\nThe recipe on its page: https://example.org/pear-cake\n");
        assertThat(kept.notes()).isEmpty();
    }
}
