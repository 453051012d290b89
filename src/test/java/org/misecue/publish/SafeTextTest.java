package org.misecue.publish;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class SafeTextTest {

    @Test
    void angle_brackets_become_signs_that_no_page_takes_for_markup() {
        assertThat(SafeText.line("Cake <script>alert(1)</script>")).isEqualTo("Cake ‹script›alert(1)‹/script›");
    }

    @Test
    void line_breaks_tabs_and_hard_spaces_become_one_space() {
        assertThat(SafeText.line("  200\u00a0g\r\n\tflour\u2028sifted ")).isEqualTo("200 g flour sifted");
    }

    @Test
    void control_characters_and_turned_reading_directions_go() {
        assertThat(SafeText.line("su\u0000g\u0007ar \u202egnipmud\u202c \u2066x\u2069\ufeff"))
                .isEqualTo("sugar gnipmud x");
    }

    @Test
    void letters_of_every_script_and_emoji_stay() {
        assertThat(SafeText.line("كعكة الليمون 🍋 👩‍🍳 Käsekuchen")).isEqualTo("كعكة الليمون 🍋 👩‍🍳 Käsekuchen");
    }

    @Property(tries = 300)
    void any_text_becomes_one_clean_line_and_stays_it(@ForAll String text) {
        String line = SafeText.line(text);

        assertThat(line.codePoints()).noneMatch(point -> Character.isISOControl(point) || point == '<' || point == '>');
        assertThat(SafeText.line(line)).isEqualTo(line);
    }
}
