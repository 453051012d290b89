package org.misecue.worktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.compare.Picture;
import org.misecue.episode.Episode;
import org.misecue.search.Hit;
import org.misecue.search.MomentIndex;

/** An ingredient's amount is found where the comparison heard it, whatever the words were; recipe and talk are invented. */
class NamedAmountsTest {

    private static final String RECIPE = """
            # Lime slice

            - 175 g butter
            - 175 g caster sugar
            - 250 g plain flour
            - 2 tbsp poppy seeds

            1. Cream the butter and the sugar.
            2. Fold in the flour and the poppy seeds.
            """;

    private static final String TALK = """
            [0:05] a hundred and seventy five grams of butter in the bowl
            [0:20] and the same again of caster sugar
            [0:45] plain flour next
            [0:50] two hundred and fifty grams of that
            [1:20] one tablespoon of poppy seeds
            [1:50] and another tablespoon of poppy seeds
            [2:20] my aunt has two hundred and fifty recipes and no flour
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void index() throws Exception {
        Files.writeString(folder.resolve("recipe.md"), RECIPE);
        Files.createDirectories(folder.resolve("narration"));
        Files.writeString(folder.resolve("narration/main.txt"), TALK);
        OwnPantry own = new OwnPantry(Optional.empty(), folder);
        new Index(new Worktop(Episode.locate(folder), own, own::read, worktop -> Picture.NONE)).build();
    }

    @ParameterizedTest
    @CsvSource({
        "butter 175 g,        5",
        "caster sugar 175 g,  20",
        "plain flour 250 g,   45",
        "flour 1/4 kg,        45",
        "poppy seeds 2 tbsp,  80",
        "poppy seeds 30 ml,   80",
    })
    void an_amount_of_something_is_found_where_it_was_heard(String query, long second) {
        List<Hit> hits = MomentIndex.find(folder, query, 10).hits();
        assertThat(hits.get(0).at().toSeconds()).isBetween(second, second + 10);
    }
}
