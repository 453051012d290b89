package org.misecue.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people and programs are given. */
class FindReportsTest {

    private static final List<String> QUERIES =
            List.of("caramel", "powdered sugar", "\"self raising flour\"", "carmel lemmon", "aubergine", "step:5");

    @TempDir
    static Path episode;

    @BeforeAll
    static void index() throws IOException {
        MomentIndex.build(episode, TestKitchen.passages(), TestKitchen.OTHER_NAMES);
    }

    @Test
    void people_read_when_what_and_where() throws IOException {
        StringBuilder read = new StringBuilder();
        for (String query : QUERIES) {
            read.append("> ").append(query).append('\n');
            read.append(FindText.of(MomentIndex.find(episode, query, 3), false)).append('\n');
        }
        assertThat(read.toString().strip().lines().toList()).isEqualTo(TestKitchen.lines("find.txt"));
    }

    @Test
    void a_terminal_shows_the_words_in_bold() {
        assertThat(FindText.of(MomentIndex.find(episode, "skewer", 1), true))
                .contains("a \u001B[1mskewer\u001B[0m comes");
    }

    @Test
    void nothing_in_a_file_commands_the_terminal() {
        assertThat(FindText.of(result("milk\u001B[2J", "a.vtt\n"), false))
                .doesNotContain("\u001B")
                .contains("milk");
    }

    @Test
    void programs_read_the_contract() throws IOException {
        JsonNode json = new ObjectMapper().readTree(FindJson.of(MomentIndex.find(episode, "skewer", 5)));
        assertThat(json.get("query").textValue()).isEqualTo("skewer");
        assertThat(json.get("hits")).hasSize(1);
        JsonNode hit = json.get("hits").get(0);
        assertThat(hit.get("source").textValue()).isEqualTo(TestKitchen.SOURCE);
        assertThat(hit.get("at").decimalValue()).isEqualByComparingTo("212.111");
        assertThat(hit.get("end").decimalValue()).isEqualByComparingTo("215");
        assertThat(hit.get("quote").textValue()).contains("until a skewer comes out clean");
        assertThat(hit.get("step").intValue()).isEqualTo(4);
        assertThat(hit.get("score").isNumber()).isTrue();
        assertThat(hit.has("episode")).isFalse();
    }

    @Test
    void json_escapes_what_it_quotes() throws IOException {
        String json = FindJson.of(result("\"<b>\u2028\\ milk", "a.vtt"));
        assertThat(new ObjectMapper()
                        .readTree(json)
                        .get("hits")
                        .get(0)
                        .get("quote")
                        .textValue())
                .isEqualTo("\"<b>\u2028\\ milk");
    }

    private static FindResult result(String quote, String source) {
        Hit hit = new Hit(
                episode,
                Passage.Kind.NARRATION,
                source,
                Duration.ZERO,
                Duration.ofSeconds(1),
                quote,
                List.of(),
                0,
                Optional.empty(),
                1);
        return new FindResult("milk", List.of(hit), Optional.empty(), false);
    }
}
