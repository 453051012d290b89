package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

class ShownJsonTest {

    private static final ShownText SHOWN = shown("1½ tsp \"fine\" salt", 1200, 4800);

    private static ShownText shown(String text, long from, long to) {
        return new ShownText(
                "footage/take-1.mp4",
                List.of(new Card(
                        "footage/take-1.mp4",
                        Duration.ofMillis(from),
                        Duration.ofMillis(to),
                        List.of(new CardLine(text, true), new CardLine("75 g rye flour", false)))),
                7,
                Duration.ofSeconds(20),
                List.of(new Note(Place.of("footage/take-1.mp4"), "a note")));
    }

    @Test
    void what_was_written_is_read_again() {
        assertThat(ShownJson.read(ShownJson.write(SHOWN, "12-34"), "12-34")).contains(SHOWN);
    }

    @Property(tries = 100)
    void any_text_and_time_comes_back(@ForAll String text, @ForAll @IntRange(max = 10_000_000) int from) {
        String clean = text.codePoints()
                .filter(sign -> !Character.isSurrogate((char) sign) || sign > 0xffff)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        ShownText shown = shown(clean, from, from + 1000L);

        assertThat(ShownJson.read(ShownJson.write(shown, "m"), "m")).contains(shown);
    }

    @Test
    void a_film_that_was_changed_is_read_anew() {
        assertThat(ShownJson.read(ShownJson.write(SHOWN, "12-34"), "12-35")).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{}",
                "[]",
                "null",
                "7",
                "no JSON",
                "{\"reading\": 1, \"mark\": \"m\"}",
                "{\"reading\": 1, \"mark\": \"m\", \"film\": \"f\", \"millis\": -1, \"cards\": [], \"notes\": []}",
                "{\"reading\": 1, \"mark\": \"m\", \"film\": \"f\", \"millis\": 1, \"cards\": [{}], \"notes\": []}",
                "{\"reading\": 0, \"mark\": \"m\", \"film\": \"f\", \"millis\": 1, \"cards\": [], \"notes\": []}"
            })
    void a_broken_or_foreign_text_is_absent(String text) {
        assertThat(ShownJson.read(text, "m")).isEmpty();
    }

    @Test
    void a_text_that_was_cut_short_is_absent() {
        String whole = ShownJson.write(SHOWN, "m");

        for (int end = 0; end < whole.strip().length(); end += 7) {
            assertThat(ShownJson.read(whole.substring(0, end), "m")).isEmpty();
        }
    }

    @Test
    void the_mark_follows_the_file(@TempDir Path folder) throws IOException {
        Path film = Files.writeString(folder.resolve("film.mp4"), "one");
        String before = ShownJson.mark(film);
        Files.writeString(film, "another");

        assertThat(ShownJson.mark(film)).isNotEqualTo(before);
        assertThatThrownBy(() -> ShownJson.mark(folder.resolve("none.mp4")))
                .isInstanceOf(BadInput.class)
                .hasMessageEndingWith("none.mp4: there is no such film; check the name in footage/");
    }
}
