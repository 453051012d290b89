package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The benchmark of ingredient lines as a test: neither half may fall. The rows of {@code learn} were looked at while the
 * reader was written; of {@code held} only the rates, so that its figure says what to expect of lines never seen.
 * {@link LinesReport} prints both by style.
 */
class IngredientLinesTest {

    private static final Path LINES = Path.of("src/test/resources/org/misecue/recipe/lines");

    @Test
    void the_lines_that_were_looked_at_are_read_wholly() throws IOException {
        assertThat(LinesReport.over(LINES.resolve("learn")).whole().rate()).isGreaterThanOrEqualTo(0.99);
    }

    @Test
    void the_lines_that_were_held_back_are_read_as_well_as_when_last_measured() throws IOException {
        assertThat(LinesReport.over(LINES.resolve("held")).whole().rate()).isGreaterThanOrEqualTo(0.96);
    }

    @Test
    void the_lines_that_were_written_to_learn_from_are_read_as_well_as_when_last_measured() throws IOException {
        assertThat(LinesReport.over(LINES.resolve("more")).whole().rate()).isGreaterThanOrEqualTo(0.97);
    }

    @Test
    void the_lines_by_the_hand_that_wrote_the_reader_are_read_as_it_meant_them() throws IOException {
        assertThat(LinesReport.over(LINES.resolve("own")).whole().rate()).isGreaterThanOrEqualTo(0.99);
    }
}
