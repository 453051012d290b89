package org.misecue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Font;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.bench.CardFilm;
import org.misecue.bench.CardTruth;
import org.misecue.shown.Card;
import org.misecue.shown.CardLine;
import org.misecue.shown.LanguageData;
import org.misecue.shown.ShownJson;
import org.misecue.shown.ShownText;

/** What a film shows, from its pictures to the verdicts. */
class OnScreenTest {

    private static final String FILM = "footage/main.mp4";

    @TempDir
    private Path folder;

    private OnStage stage;

    @BeforeEach
    void there_is_an_episode_with_a_film() throws IOException {
        stage = new OnStage(folder);
        stage.write(
                "buns/recipe.md",
                "# Buns\n\n## Ingredients\n\n- 500 g plain flour\n- 80 g caster sugar\n\n## Method\n\n1. Mix the flour and sugar.\n");
        stage.write(
                "buns/narration/main.txt",
                "[0:01] five hundred grams of plain flour\n[0:03] eighty grams of caster sugar\n");
        Files.createDirectories(folder.resolve("buns/footage"));
        CardTruth card = new CardTruth(
                List.of("90 g caster sugar"),
                new Font("Dialog", Font.PLAIN, 20),
                CardTruth.Look.LIGHT_ON_BOX,
                0.075,
                false,
                0.1,
                0.6,
                Duration.ofSeconds(2),
                Duration.ofSeconds(4));
        new CardFilm("main", 640, 360, 25, 0.12, CardFilm.Picture.QUIET, 5, Duration.ofSeconds(5), List.of(card))
                .write(folder.resolve("buns/" + FILM));
    }

    @Test
    void a_wrong_card_differs_although_it_is_said_right() throws IOException {
        Optional<LanguageData> data = LanguageData.find(System.getenv());
        if (!Boolean.getBoolean("misecue.require.ocr")) {
            assumeTrue(data.isPresent(), "skipped: Tesseract's language data is not installed");
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream print = new PrintStream(out, true, StandardCharsets.UTF_8);
        Stage reading = new Stage(print, print, folder, false, Optional.empty(), () -> data);

        int exit = Misecue.run(new String[] {"compare", "buns", "--json", "--quiet"}, reading);

        assertThat(exit).isEqualTo(ExitCode.DIFFERS);
        JsonNode sugar = new ObjectMapper()
                .readTree(out.toString(StandardCharsets.UTF_8))
                .get("written")
                .get(1);
        assertThat(sugar.get("verdict").asText()).isEqualTo("differs");
        assertThat(sugar.get("reason").asText()).isEqualTo("Said as written: 80 g. Shown as 90 g; 80 g is written.");
        JsonNode shown = sugar.get("evidence").get(1);
        assertThat(shown.get("via").asText()).isEqualTo("shown");
        assertThat(shown.get("source").asText()).isEqualTo(FILM);
        assertThat(shown.get("at").asDouble()).isBetween(1.5, 2.5);
        assertThat(folder.resolve("buns/.misecue/shown/main.mp4.json")).exists();
    }

    @Test
    void what_was_read_once_is_kept_as_long_as_the_film_is_the_same() throws IOException {
        keep("90 g caster sugar", false);
        assertThat(stage.run("compare", "buns").exit()).isEqualTo(ExitCode.DIFFERS);

        Path film = folder.resolve("buns/" + FILM);
        byte[] other = Files.readAllBytes(film);
        other[other.length - 1] ^= 1;
        Files.write(film, other);
        OnStage.Ran ran = stage.run("compare", "buns");
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).contains("text in the picture is not read", "tesseract-ocr-eng");
    }

    @Test
    void a_doubtful_card_is_to_be_looked_at_and_never_agrees() {
        keep("80 g caster sugar", true);
        OnStage.Ran ran = stage.run("compare", "buns");
        assertThat(ran.out())
                .contains(
                        "1 to listen to",
                        "The picture cannot be read for certain there: look.",
                        "on screen “80 g caster sugar”");
    }

    @Test
    void a_broken_kept_reading_is_made_again() {
        stage.write("buns/.misecue/shown/main.mp4.json", "{\"reading\": [");
        assertThat(stage.run("compare", "buns").exit()).isZero();
    }

    private void keep(String line, boolean doubtful) {
        Card card = new Card(FILM, Duration.ofSeconds(2), Duration.ofSeconds(4), List.of(new CardLine(line, doubtful)));
        ShownText text = new ShownText(FILM, List.of(card), 3, Duration.ofSeconds(5), List.of());
        stage.write(
                "buns/.misecue/shown/main.mp4.json",
                ShownJson.write(text, ShownJson.mark(folder.resolve("buns/" + FILM))));
    }
}
