package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.footage.Grey;

class FractionsTest {

    private static final int SIZE = 80;
    private static final double CAPITAL = 0.72 * SIZE;

    private static Grey written(String text) {
        Grey drawn = Pictures.drawn(700, 120, pen -> Pictures.text(pen, text, 20, 90, SIZE));
        byte[] turned = drawn.pixels().clone();
        for (int i = 0; i < turned.length; i++) {
            turned[i] = (byte) (255 - (turned[i] & 0xff));
        }
        return Tone.blackAndWhite(new Grey(drawn.width(), drawn.height(), turned), 128);
    }

    @ParameterizedTest
    @CsvSource({"½ tsp", "1¼ cup", "3¾ tsp", "½ a ¼"})
    void fractions_of_one_sign_are_found_by_their_shape(String text) {
        long signs = text.codePoints().filter(sign -> sign > 0xa0).count();

        assertThat(Fractions.find(written(text), CAPITAL)).hasSize((int) signs);
    }

    @ParameterizedTest
    @CsvSource({"225 g flour", "1/2 tsp", "180°C / gas 4", "Knead, rest", "4 x 2.5", "AVWMNXKZ"})
    void other_signs_are_none(String text) {
        assertThat(Fractions.find(written(text), CAPITAL)).isEmpty();
    }

    @Test
    void a_percent_sign_is_known_by_its_two_holes() {
        List<Fractions.Found> found = Fractions.find(written("70%"), CAPITAL);

        assertThat(found).allSatisfy(sign -> {
            assertThat(Fractions.holes(sign.above())).isEqualTo(1);
            assertThat(Fractions.holes(sign.below())).isEqualTo(1);
        });
    }

    @Test
    void a_fraction_with_figures_one_upon_the_other_is_found() {
        Grey stacked = Pictures.drawn(120, 120, pen -> {
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, 120, 120);
            pen.setColor(Color.BLACK);
            pen.fillRect(55, 20, 8, 30);
            pen.fillRect(42, 56, 34, 5);
            pen.fillRect(45, 66, 28, 6);
            pen.fillRect(60, 70, 6, 26);
        });

        assertThat(Fractions.find(Tone.blackAndWhite(stacked, 128), 75)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"1, 2, ½", "3, 4, ¾", "2, 3, ⅔", "7, 8, ⅞"})
    void known_pairs_have_a_sign(String above, String below, String sign) {
        assertThat(Fractions.sign(above, below)).contains(sign);
    }

    @ParameterizedTest
    @CsvSource({"4, 4", "8, 3", "5, 4", "6, 7"})
    void other_pairs_have_none(String above, String below) {
        assertThat(Fractions.sign(above, below)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"4, 1, true", "4, 0, true", "8, 2, true", "8, 1, false", "3, 0, true", "3, 1, false", "1, 1, false"})
    void a_figure_must_fit_its_holes(String figure, int holes, boolean fits) {
        assertThat(Fractions.fits(figure, holes)).isEqualTo(fits);
    }
}
