package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeout;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.QuantityWriter;
import org.misecue.recipe.manuscript.Line;

class IngredientLineTest {

    private final IngredientLineParser parser = new IngredientLineParser(Pantry.standard());

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "ingredient-lines.csv", delimiter = '|', quoteCharacter = '\0', emptyValue = "")
    void lines_are_read_as_a_cook_reads_them(
            String text,
            String amount,
            String ingredient,
            String preparation,
            String packing,
            String alternative,
            String others,
            String optional) {
        IngredientLine line = parser.parse(line(text));
        assertThat(line.text()).isEqualTo(text);
        assertThat(line.quantity().map(QuantityWriter::text).orElse("–")).isEqualTo(amount);
        assertThat(line.ingredient()).isEqualTo(ingredient);
        assertThat(line.preparation()).isEqualTo(plain(preparation));
        assertThat(line.packing()).isEqualTo(plain(packing));
        assertThat(line.alternative().map(QuantityWriter::text).orElse("")).isEqualTo(plain(alternative));
        assertThat(String.join("; ", line.alternatives())).isEqualTo(plain(others));
        assertThat(line.optional()).isEqualTo("optional".equals(optional));
    }

    @Property(tries = 300)
    void any_line_keeps_its_text_and_breaks_nothing(@ForAll @StringLength(max = 60) String text) {
        assertThat(parser.parse(line(text)).text()).isEqualTo(text);
    }

    /** Each of these once took seconds or minutes, growing with the square or the cube of the length. */
    @ParameterizedTest
    @ValueSource(strings = {"\t", "fine ", "chopped ", "1 x ", "(", "and finely ", "1/", "or butter "})
    void a_line_without_end_is_kept_in_no_time(String piece) {
        String text = "1 g " + piece.repeat(200_000 / piece.length()) + "butter";
        assertThat(assertTimeout(
                        Duration.ofSeconds(2), () -> parser.parse(line(text)).text()))
                .isEqualTo(text);
    }

    private static Line line(String text) {
        return new Line(1, Line.Kind.ITEM, 0, text, false);
    }

    private static String plain(String cell) {
        return cell == null ? "" : cell;
    }
}
