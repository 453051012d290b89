package org.misecue.worktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;
import org.misecue.search.Hit;
import org.misecue.search.MomentIndex;

/** Amounts are found by their value, however they were said; the talk is invented. */
class FindAmountsTest {

    private static final String TALK = """
            [0:05] so first we want one twenty five grams of sugar in the bowl
            [0:12] then an eighth of a kilo of butter
            [0:20] and half a teaspoon of salt
            [0:30] the oven is at two hundred degrees celsius
            [0:40] bake it for twenty minutes
            [0:50] it takes a quarter
            [0:53] of an hour to cool
            [1:02] and three eggs go in last
            [1:10] nobody likes flour on the floor
            [1:20] ten to twelve minutes more
            """;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "125 g sugar,        5, one twenty five grams|sugar",
        "sugar 0.125 kg,     5, one twenty five grams|sugar",
        "125 g butter,       12, an eighth of a kilo|butter",
        "½ tsp,              20, half a teaspoon",
        "2.5 ml salt,        20, half a teaspoon|salt",
        "200 °C,             30, two hundred degrees celsius",
        "20 minutes,         40, twenty minutes",
        "'\"20 minutes\"',   40, twenty minutes",
        "15 minutes,         50, a quarter of an hour",
        "3 eggs,             62, three|eggs",
        "12 minutes,         80, ten to twelve minutes",
        "10-12 minutes,      80, ten to twelve minutes",
    })
    void an_amount_is_found_where_it_is_said_and_its_words_are_marked(String query, long second, String marked)
            throws Exception {
        Hit hit = find(query).get(0);
        assertThat(hit.at()).isBetween(Duration.ofSeconds(second), Duration.ofSeconds(second + 7));
        assertThat(hit.marks().stream()
                        .map(mark -> hit.quote().substring(mark.from(), mark.to()))
                        .toList())
                .containsExactly(marked.split("\\|"));
    }

    @Test
    void another_amount_is_not_found_for_it() throws Exception {
        assertThat(find("126 g")).isEmpty();
        assertThat(find("500 °C")).isEmpty();
    }

    @Test
    void a_number_alone_is_a_word() throws Exception {
        assertThat(find("three").get(0).quote()).contains("three eggs");
        assertThat(find("flour floor").get(0).quote()).contains("nobody likes");
    }

    private List<Hit> find(String query) throws Exception {
        Path file = Files.writeString(folder.resolve("main.txt"), TALK);
        Narration narration = NarrationReader.read(file, "main.txt");
        MomentIndex.build(folder, Findable.passages(List.of(narration)), List.of());
        return MomentIndex.find(folder, query, 10).hits();
    }
}
