package org.misecue.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.narration.Clock;

/** Every row of {@code queries.txt}, looked for in {@code narration.txt}. */
class FindTableTest {

    @TempDir
    static Path episode;

    @BeforeAll
    static void index() throws IOException {
        MomentIndex.build(episode, TestKitchen.passages(), TestKitchen.OTHER_NAMES);
    }

    static Stream<List<String>> rows() throws IOException {
        return TestKitchen.lines("queries.txt").stream()
                .filter(line -> !line.startsWith("#") && !line.isBlank())
                .map(line -> Stream.of(line.split("\\|", -1)).map(String::strip).toList());
    }

    @ParameterizedTest
    @MethodSource("rows")
    void the_best_hit_is_the_expected_moment(List<String> row) {
        FindResult result = MomentIndex.find(episode, row.get(0), 5);
        if (row.get(1).isEmpty()) {
            assertThat(result.hits()).isEmpty();
        } else {
            Hit best = result.hits().get(0);
            assertThat(Clock.hms(best.at())).isEqualTo(row.get(1));
            assertThat(TestKitchen.marked(best)).contains(row.get(2));
        }
    }
}
