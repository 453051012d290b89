package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A footnote is read where its mark stands, and is no ingredient of its own. */
class FootnotesTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
                    md;  - 175 g butter*\\n- 200 g flour\\n\\n\\* or use margarine;             175 g butter (or use margarine)
                    md;  - 175 g butter*\\n- 200 g flour\\n\\n* or use margarine;               175 g butter (or use margarine)
                    txt; 175 g butter*\\n200 g flour\\n\\n*or use margarine.;                    175 g butter (or use margarine)
                    txt; 175 g butter †, cold\\n200 g flour\\n\\n† Unsalted if you have it;      175 g butter, cold (Unsalted if you have it)
                    txt; * 175 g butter**\\n* 200 g flour\\n\\n** see the note on page 3;        175 g butter (see the note on page 3)
                    txt; 175 g butter\\n200 g flour;                                             175 g butter
                    """)
    void the_first_line_reads(String kind, String list, String first) throws IOException {
        String text =
                "Shortbread\n\nIngredients\n\n" + list.replace("\\n", "\n").replace("\\*", "*")
                        + "\n\nMethod\n\nRub the butter into the flour and bake for 20 minutes.\n";
        Recipe recipe = RecipeReader.read(Files.writeString(folder.resolve("r." + kind), text), "r." + kind);
        assertThat(recipe.lines()).extracting(IngredientLine::text).isEqualTo(List.of(first, "200 g flour"));
        assertThat(recipe.lines().get(0).ingredient()).isEqualTo("butter");
    }
}
