package org.misecue.desk.begin;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SafeNameTest {

    @ParameterizedTest
    @CsvSource({
        "take-1.mp4, take-1.mp4",
        "Prise 3 – crème.MOV, Prise 3 – crème.MOV",
        "/etc/x.mp4, x.mp4",
        "../../x.mp4, x.mp4",
        "C:\\films\\x.mp4, x.mp4",
        "C:x.mp4, C-x.mp4",
        "..%2fx.mp4, %2fx.mp4",
        "..\\x.mp4, x.mp4",
        ".hidden.mp4, hidden.mp4",
        "...mp4, mp4",
        "..,''",
        "'',''",
        "-rf.mp4, rf.mp4",
        "con.mp4, file-con.mp4",
        "NUL, file-NUL",
        "nul .mp4, file-nul .mp4",
        "Com1.tar.mp4, file-Com1.tar.mp4",
        "com¹.mp4, file-com¹.mp4",
        "console.mp4, console.mp4",
        "'take 1.mp4. . ', take 1.mp4",
        "take:1?.mp4, take-1-.mp4",
    })
    void keeps_of_a_name_what_every_system_takes(String given, String kept) {
        assertThat(SafeName.of(given)).isEqualTo(kept);
    }

    @Test
    void signs_that_nobody_sees_go() {
        assertThat(SafeName.of("a\0b\n\u007f\u202Egpj.mp4\uD800")).isEqualTo("abgpj.mp4");
        assertThat(SafeName.of("e\u0301.mp4")).isEqualTo("\u00e9.mp4");
    }

    @Test
    void long_names_keep_their_ending() {
        assertThat(SafeName.of("x".repeat(300) + ".mp4")).hasSize(120).endsWith("xx.mp4");
        assertThat(SafeName.of("菓".repeat(100) + ".mp4").getBytes(UTF_8)).hasSizeLessThanOrEqualTo(200);
        assertThat(SafeName.of("🍰".repeat(100) + ".mp4")).endsWith("🍰.mp4");
    }

    @Property(tries = 2000)
    void whatever_is_sent_names_a_plain_file(@ForAll String given) {
        String name = SafeName.of(given + ".mp4");
        assertThat(name).doesNotContain("/", "\\", "\0").doesNotStartWith(".").hasSizeLessThanOrEqualTo(125);
        assertThat(SafeName.of(name)).isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({"Take.MP4, take.mp4", "STRASSE.mp4, straße.mp4", "ﬁlm.mp4, film.mp4"})
    void names_that_some_disk_takes_for_one_are_equal(String one, String other) {
        assertThat(SafeName.folded(one)).isEqualTo(SafeName.folded(other));
    }
}
