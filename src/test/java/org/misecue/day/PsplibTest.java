package org.misecue.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

/**
 * The set j30 of the project scheduling problem library (Kolisch and Sprecher, 1997), whose least makespans are published.
 * The problems lie beside the project in {@code shared/psplib}.
 */
class PsplibTest {

    @ParameterizedTest
    @CsvSource({
        "j301_1, 43",
        "j301_2, 47",
        "j301_3, 47",
        "j301_4, 62",
        "j301_5, 39",
        "j301_6, 48",
        "j301_7, 60",
        "j301_8, 53",
        "j301_9, 49",
        "j301_10, 45"
    })
    void the_published_makespan_is_found_and_proved(String name, int published) throws IOException {
        String text = Files.readString(problem(name));
        Psplib.Result result = Psplib.solve(name, text);
        assertThat(result.makespan()).isEqualTo(published);
        assertThat(result.proved()).isTrue();
    }

    private static Path problem(String name) {
        Optional<Path> found = Stream.iterate(Path.of("").toAbsolutePath(), dir -> dir != null, Path::getParent)
                .map(dir -> dir.resolve("shared").resolve("psplib").resolve(name + ".sm"))
                .filter(Files::isRegularFile)
                .findFirst();
        if (found.isEmpty()) {
            Assumptions.abort("skipped: the library's problems were not found in ../shared/psplib");
        }
        return found.orElseThrow();
    }

    private static String threeCakes() throws IOException {
        try (InputStream in = PsplibTest.class.getResourceAsStream("three-cakes.sm")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Johnson's rule for two machines (1954): the shortest first piece first, the shortest last piece last: 3, 2, 4. */
    @Test
    void a_problem_for_two_machines_takes_as_long_as_johnsons_rule_says() throws IOException {
        Psplib.Result result = Psplib.solve("three-cakes.sm", threeCakes());
        assertThat(result.makespan()).isEqualTo(16);
        assertThat(result.proved()).isTrue();
        assertThat(result.json()).matches("\\{\"makespan\": 16, \"proved\": true, \"seconds\": \\d+\\.\\d{3}}\\R");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "RESOURCEAVAILABILITIES:       | RESOURCES: | three-cakes.sm:1: expected a line \"RESOURCEAVAILABILITIES:\"; use a single-mode .sm file of the library, unchanged.",
                "5      1     5                | 5      1     x | three-cakes.sm:25: expected at least 3 whole numbers from 0; use a single-mode .sm file of the library, unchanged.",
                "7        1          1           8 | 7        1          1           9 | three-cakes.sm:15: expected successors from 1 to 8; use a single-mode .sm file of the library, unchanged.",
                "8        1          0         | 8        1          1           2 | three-cakes.sm: jobs wait for each other in a circle; mend the precedence relations.",
                "4      1     6       1    0   | 4      1     6       2    0 | three-cakes.sm:24: expected no more of R 1 than there is; use a single-mode .sm file of the library, unchanged.",
                "8      1     0       0    0   | ***** | three-cakes.sm:21: expected as many rows of durations as of jobs, 8; use a single-mode .sm file of the library, unchanged."
            })
    void a_damaged_problem_is_told_with_its_line(String from, String to, String message) throws IOException {
        String text = threeCakes();
        assertThat(text).contains(from);
        assertThatThrownBy(() -> Psplib.solve("three-cakes.sm", text.replace(from, to)))
                .isInstanceOf(BadInput.class)
                .hasMessage(message);
    }
}
