package org.misecue.shown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.bench.CardFilm;
import org.misecue.bench.CardTruth;
import org.misecue.notice.BadInput;

/** With the recogniser: skipped without its language data, unless {@code -Dmisecue.require.ocr=true}. */
class CardsTest {

    private static final Duration HALF = Duration.ofMillis(500);

    @TempDir
    Path folder;

    private static LanguageData data() {
        Optional<LanguageData> data = LanguageData.find(System.getenv());
        if (!Boolean.getBoolean("misecue.require.ocr")) {
            assumeTrue(data.isPresent(), "skipped: Tesseract's language data is not installed");
        }
        return data.orElseThrow(() -> new AssertionError("Tesseract's language data is not installed"));
    }

    private static CardTruth card(CardTruth.Look look, double from, double to, String... lines) {
        return new CardTruth(
                List.of(lines),
                Pictures.font(),
                look,
                0.075,
                false,
                0.1,
                0.6,
                Duration.ofMillis((long) (1000 * from)),
                Duration.ofMillis((long) (1000 * to)));
    }

    private Path film(Duration length, CardTruth... cards) {
        Path file = folder.resolve("film.mp4");
        new CardFilm("film", 640, 360, 25, 0.12, CardFilm.Picture.PANNING, 5, length, List.of(cards)).write(file);
        return file;
    }

    @Test
    void cards_are_read_with_their_amounts_and_times() {
        LanguageData data = data();
        Path film = film(
                Duration.ofSeconds(8),
                card(CardTruth.Look.LIGHT_ON_BOX, 1, 4, "1½ tsp fine salt", "225 g rye flour"),
                card(CardTruth.Look.DARK_ON_BOX, 4.6, 7.4, "Bake 25–30 min"));
        List<Duration> progress = new ArrayList<>();

        ShownText shown = Cards.read(film, "footage/film.mp4", data, progress::add);

        assertThat(shown.cards()).hasSize(2);
        Card first = shown.cards().get(0);
        assertThat(first.film()).isEqualTo("footage/film.mp4");
        // The figures of a fraction are too small here to be told apart for sure.
        assertThat(first.lines())
                .containsExactly(new CardLine("1½ tsp fine salt", true), new CardLine("225 g rye flour", false));
        assertThat(first.from()).isCloseTo(Duration.ofSeconds(1), HALF);
        assertThat(first.to()).isCloseTo(Duration.ofSeconds(4), HALF);
        assertThat(shown.cards().get(1).lines().get(0).text()).matches("Bake 25[-–—]30 min");
        assertThat(shown.length()).isEqualTo(Duration.ofSeconds(8));
        assertThat(shown.notes()).isEmpty();
        assertThat(progress).isSorted().hasSizeGreaterThan(30);
    }

    @Test
    void a_film_without_cards_has_none() {
        ShownText shown = Cards.read(film(Duration.ofSeconds(3)), "film.mp4", data(), at -> {});

        assertThat(shown.cards()).isEmpty();
    }

    @Test
    void data_that_the_recogniser_refuses_is_a_note_and_the_work_goes_on() throws IOException {
        data();
        Files.writeString(folder.resolve("eng.traineddata"), "no data");

        ShownText shown = Cards.read(film(Duration.ofSeconds(1)), "film.mp4", new LanguageData(folder), at -> {});

        assertThat(shown.cards()).isEmpty();
        assertThat(shown.notes())
                .singleElement()
                .asString()
                .contains("because Tesseract cannot use the language data in");
    }

    @Test
    void what_is_no_film_is_refused_before_anything_is_loaded() throws IOException {
        Path none = Files.writeString(folder.resolve("film.mp4"), "");

        assertThatThrownBy(() -> Cards.read(none, "film.mp4", new LanguageData(folder), at -> {}))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("the film is empty");
    }
}
