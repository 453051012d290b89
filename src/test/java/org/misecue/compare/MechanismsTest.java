package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.misecue.compare.SentencesTest.Case;
import org.misecue.narration.Narration;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.Speech;

/** A mechanism stays because something that people say comes out wrong without it: a row of the sentences' tables shows it. */
class MechanismsTest {

    /** A row with what it needs, read once. */
    private record Read(Case row, Recipe recipe, List<Narration> said) {

        boolean comesOutRight(Set<Mechanism> mechanisms) {
            return row.comesOut(Comparer.compare(recipe, said, Pantry.standard(), mechanisms));
        }
    }

    private static final List<Read> ROWS = new ArrayList<>();

    @BeforeAll
    static void read(@TempDir Path folder) throws IOException, URISyntaxException {
        Path file = folder.resolve("recipe.md");
        for (Case row : SentencesTest.cases().toList()) {
            Recipe recipe = RecipeReader.read(Files.writeString(file, row.markdown()), "recipe.md");
            ROWS.add(new Read(row, recipe, List.of(Speech.narration(row.said()))));
        }
    }

    @ParameterizedTest
    @EnumSource(Mechanism.class)
    void without_it_a_row_comes_out_wrong(Mechanism mechanism) {
        Set<Mechanism> others = EnumSet.complementOf(EnumSet.of(mechanism));
        assertThat(ROWS).anyMatch(row -> !row.comesOutRight(others));
    }
}
