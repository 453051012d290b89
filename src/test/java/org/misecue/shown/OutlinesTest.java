package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.footage.Grey;

/** In drawings: . ground, # outline, o letter; the picture is turned over, so the outline is the lightest. */
class OutlinesTest {

    private static Grey picture(List<String> rows) {
        int width = rows.get(0).length();
        byte[] pixels = new byte[width * rows.size()];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = (byte)
                    switch (rows.get(i / width).charAt(i % width)) {
                        case '#' -> 255;
                        case 'o' -> 0;
                        default -> 30;
                    };
        }
        return new Grey(width, rows.size(), pixels);
    }

    private static List<String> letters(Grey picture) {
        return IntStream.range(0, picture.height())
                .mapToObj(y -> IntStream.range(0, picture.width())
                        .mapToObj(x -> picture.at(x, y) == 0 ? "o" : " ")
                        .reduce("", String::concat)
                        .stripTrailing())
                .toList();
    }

    @Test
    void what_lies_within_an_outline_is_the_letter() {
        assertThat(letters(Outlines.filled(picture(List.of(
                        "........", //
                        "..####..",
                        "..#oo#..",
                        "..#oo#..",
                        "..####..",
                        "........")))))
                .containsExactly("", "", "   oo", "   oo", "", "");
    }

    @Test
    void the_hole_of_a_letter_is_none() {
        assertThat(letters(Outlines.filled(picture(List.of(
                        "...........", //
                        ".#########.",
                        ".#ooooooo#.",
                        ".#o#####o#.",
                        ".#o#...#o#.",
                        ".#o#####o#.",
                        ".#ooooooo#.",
                        ".#########.",
                        "...........")))))
                .containsExactly("", "", "  ooooooo", "  o     o", "  o     o", "  o     o", "  ooooooo", "", "");
    }

    @Test
    void ground_that_outlines_shut_in_between_letters_is_none_where_it_is_less_light() {
        assertThat(letters(Outlines.filled(picture(List.of(
                        "...........", //
                        ".#########.",
                        ".#oo#.#oo#.",
                        ".#oo#.#oo#.",
                        ".#oo#.#oo#.",
                        ".#########.",
                        "...........")))))
                .containsExactly("", "", "  oo   oo", "  oo   oo", "  oo   oo", "", "");
    }

    @Test
    void an_outline_that_is_closed_by_its_corners_is_closed() {
        assertThat(letters(Outlines.filled(picture(List.of(
                        ".....", //
                        "..#..", ".#o#.", "..#..", ".....")))))
                .containsExactly("", "", "  o", "", "");
    }

    @Test
    void letters_on_a_ground_as_light_as_an_outline_stand_there_plainly_and_are_left_to_others() {
        assertThat(letters(Outlines.filled(picture(List.of("#####", "#ooo#", "#o#o#", "#####")))))
                .containsOnly("");
    }

    @ParameterizedTest
    @ValueSource(ints = {130, 180, 230})
    void outlined_letters_come_out_the_same_on_grounds_nearly_as_light_as_they_are(int ground) {
        Grey dark = Outlines.filled(outlined(160), 1);
        Grey light = Outlines.filled(outlined(ground), 1);

        long differ = IntStream.range(0, dark.pixels().length)
                .filter(i -> Math.abs((dark.pixels()[i] & 0xff) - (light.pixels()[i] & 0xff)) > 128)
                .count();
        long ink = IntStream.range(0, dark.pixels().length)
                .filter(i -> (dark.pixels()[i] & 0xff) < 128)
                .count();
        assertThat(ink).isGreaterThan(1000);
        assertThat((double) differ / ink).isLessThan(0.05);
    }

    /** White letters with a black outline, turned over. */
    private static Grey outlined(int ground) {
        Grey drawn = Pictures.drawn(400, 100, pen -> {
            pen.setColor(new Color(ground, ground, ground));
            pen.fillRect(0, 0, 400, 100);
            Shape letters = Pictures.font()
                    .deriveFont(60f)
                    .createGlyphVector(pen.getFontRenderContext(), "325 g oats")
                    .getOutline(20, 70);
            pen.setStroke(new BasicStroke(7, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            pen.setColor(Color.BLACK);
            pen.draw(letters);
            pen.setColor(Color.WHITE);
            pen.fill(letters);
        });
        return Tone.together(List.of(drawn), true);
    }
}
