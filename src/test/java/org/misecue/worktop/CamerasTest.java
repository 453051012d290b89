package org.misecue.worktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.episode.Episode;
import org.misecue.footage.Beside;
import org.misecue.footage.Offset;
import org.misecue.footage.Take;

class CamerasTest {

    @TempDir
    static Path set;

    @TempDir
    Path folder;

    private final List<String> listened = new ArrayList<>();
    private Path main;
    private Path above;

    @BeforeAll
    static void film() {
        Take take = new Take(6, 30);
        take.film(set.resolve("main.mp4"), 1, 400);
        take.film(set.resolve("above.mp4"), 4.2, 400);
        take.film(set.resolve("later.mp4"), 6, 400);
        new Take(7, 30).film(set.resolve("other.mp4"), 0, 400);
    }

    @BeforeEach
    void set_up() throws IOException {
        Files.writeString(folder.resolve("recipe.md"), "# Oat slice\n\n- 200 g oats\n\n1. Stir the oats.\n");
        Path footage = Files.createDirectories(folder.resolve("footage"));
        main = Files.copy(set.resolve("main.mp4"), footage.resolve("main.mp4"));
        above = Files.copy(set.resolve("above.mp4"), footage.resolve("above.mp4"));
    }

    private void replace(String film) throws IOException {
        Files.copy(set.resolve(film), above, StandardCopyOption.REPLACE_EXISTING);
    }

    private Cameras cameras() {
        return new Cameras(Episode.open(folder), film -> {
            listened.add(String.valueOf(film.getFileName()));
            return at -> true;
        });
    }

    private Optional<Duration> later() {
        return cameras()
                .beside(main, above)
                .offset()
                .map(Offset::later)
                .map(later -> Duration.ofMillis(Math.round(later.toNanos() / 1e6)));
    }

    @Test
    void films_are_listened_to_once_and_the_offset_is_kept() throws IOException {
        assertThat(later()).contains(Duration.ofMillis(3200));
        assertThat(listened).containsExactly("main.mp4", "above.mp4");

        assertThat(later()).contains(Duration.ofMillis(3200));
        Beside kept = cameras().beside(above, main);
        assertThat(kept.turned()).isEqualTo(cameras().beside(main, above));
        Path renamed = Files.move(above, above.resolveSibling("close-up.mp4"));
        assertThat(cameras().beside(main, renamed).offset())
                .isEqualTo(kept.turned().offset())
                .isPresent();
        assertThat(listened).hasSize(2);
    }

    @Test
    void that_nothing_is_known_is_kept_as_well() throws IOException {
        replace("other.mp4");
        assertThat(later()).isEmpty();
        assertThat(later()).isEmpty();
        assertThat(listened).hasSize(2);
    }

    @Test
    void another_film_under_the_same_name_is_heard_anew() throws IOException {
        later();
        replace("later.mp4");
        assertThat(later()).contains(Duration.ofMillis(5000));
        assertThat(listened).hasSize(4);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "200 g oats", "[]", "{\"hearing\": 0}", "{\"hearing\": 2, \"pairs\": [{\"first\": 3}]}"})
    void what_was_kept_and_cannot_be_read_is_found_again(String text) throws IOException {
        Files.writeString(Files.createDirectories(folder.resolve(".misecue")).resolve("together.json"), text);
        assertThat(later()).contains(Duration.ofMillis(3200));
        assertThat(Files.readString(folder.resolve(".misecue/together.json"))).contains("\"laterNanos\" : 3");
    }

    @Test
    void what_was_interrupted_is_not_kept() {
        Cameras cameras = new Cameras(Episode.open(folder), film -> at -> false);
        assertThat(cameras.beside(main, above)).isEqualTo(Beside.UNKNOWN);
        assertThat(folder.resolve(".misecue/together.json")).doesNotExist();
    }

    /** Each has the sound of its own day, or of the same one, and the clock of the day as somebody set it. */
    @ParameterizedTest(name = "{0} at {1}: {2}")
    @CsvSource(delimiter = '|', textBlock = """
            same  | 10:00:03:05 | ByBoth[           | 3200
            same  | 10:00:03:06 | ByBoth[           | 3240
            same  | 10:00:05:05 | BySound[          | 3200
            other | 10:00:03:05 |                   |
            quiet | 10:00:03:05 | ByTimecode[asked=true]  | 3200
            mute  | 10:00:03:05 | ByTimecode[asked=false] | 3200
            """)
    void time_codes_are_held_against_the_sound(
            String day, String timecode, @Nullable String basis, @Nullable Integer later) {
        new Take(6, 30).film(main, 1, 400, "10:00:00:00");
        switch (day) {
            case "same" -> new Take(6, 30).film(above, 4.2, 400, timecode);
            case "other" -> new Take(7, 30).film(above, 4.2, 400, timecode);
            case "quiet" -> Take.silent(30).film(above, 4.2, 400, timecode);
            default -> Take.mute(above, 400, timecode);
        }

        Beside beside = cameras().beside(main, above);
        assertThat(beside.offset().map(one -> one.basis().toString()).orElse(""))
                .startsWith(basis == null ? "" : basis);
        assertThat(beside.offset().map(one -> Math.round(one.later().toNanos() / 1e6)))
                .isEqualTo(Optional.ofNullable(later).map(Integer::longValue));
        boolean denied = basis == null || basis.startsWith("BySound");
        assertThat(beside.denied().isPresent()).isEqualTo(denied);
        assertThat(cameras().beside(above, main).turned()).isEqualTo(beside);
        assertThat(listened).hasSize(day.equals("mute") ? 0 : 2);
    }
}
