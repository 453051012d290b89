package org.misecue.sample;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.footage.Footage;
import org.misecue.footage.Still;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;

/** Keeps the sample's truth, {@code expected.yaml}, in step with the sample itself. */
class SampleEpisodeTest {

    private static final Path SAMPLE = Path.of("sample-project");
    private static final Path FILM = SAMPLE.resolve("footage/take-1.mp4");
    private static final Pattern CUE = Pattern.compile("(\\d\\d):(\\d\\d):(\\d\\d\\.\\d{3}) --> .*\\n(.+)");

    private final JsonNode expected = read();
    private final Map<Double, String> cues = cues();

    @Test
    void every_ingredient_line_has_one_expected_verdict() throws IOException {
        List<String> lines = Files.readAllLines(SAMPLE.resolve("recipe.md")).stream()
                .filter(line -> line.startsWith("- "))
                .map(line -> line.substring(2))
                .toList();
        assertThat(expected.get("written").findValuesAsText("line")).isEqualTo(lines);
    }

    @Test
    void every_expected_moment_is_the_start_of_a_cue() {
        for (String list : List.of("written", "settings", "unwritten")) {
            for (JsonNode row : expected.get(list)) {
                row.get("at").forEach(at -> assertThat(cues).as(row.toString()).containsKey(at.asDouble()));
            }
        }
    }

    @Test
    void every_aside_is_said_where_it_is_expected() {
        for (JsonNode aside : expected.get("asides")) {
            assertThat(cues.get(aside.get("at").asDouble()))
                    .as(aside.toString())
                    .contains(aside.get("quote").asText());
        }
    }

    @Test
    void what_is_shown_agrees_with_the_recipe_but_for_what_is_marked_wrong() throws IOException {
        String recipe = Files.readString(SAMPLE.resolve("recipe.md")).replaceAll("\\(.*?\\) ", "");
        List<String> wrong = StreamSupport.stream(expected.get("shown").spliterator(), false)
                .filter(shown -> !recipe.contains(shown.get("text").asText()))
                .map(shown -> shown.get("text").asText())
                .toList();
        assertThat(wrong).containsExactly("60 g icing sugar");
    }

    @Test
    void the_film_is_small_and_as_long_as_the_narration() throws IOException {
        Narration narration = NarrationReader.read(SAMPLE.resolve("narration/main.vtt"), "narration/main.vtt");
        Duration end = narration.cues().get(narration.cues().size() - 1).end();

        assertThat(Files.size(FILM)).isLessThan(3_000_000);
        assertThat(Footage.probe(FILM).length()).isBetween(end, end.plusSeconds(2));
    }

    @Test
    void the_film_shows_its_lower_thirds_when_expected(@TempDir Path folder) throws IOException {
        for (JsonNode shown : expected.get("shown")) {
            int start = shown.get("start").asInt();
            int end = shown.get("end").asInt();
            assertThat(hasLowerThird(start, folder)).as(shown.toString()).isTrue();
            assertThat(hasLowerThird(end, folder)).as("after " + shown).isFalse();
        }
    }

    /** A lower third is a pale strip that begins with a dark red bar. */
    private static boolean hasLowerThird(double second, Path folder) throws IOException {
        Path png = folder.resolve("still.png");
        Still.at(FILM, Duration.ofMillis(Math.round(second * 1000)), png);
        BufferedImage still = ImageIO.read(png.toFile());
        return (still.getRGB(43, 310) & 0xff) < 128 && (still.getRGB(56, 310) & 0xff) > 220;
    }

    @Test
    void the_narration_lasts_six_to_ten_minutes() {
        assertThat(cues.keySet())
                .last()
                .asInstanceOf(InstanceOfAssertFactories.DOUBLE)
                .isBetween(360.0, 600.0);
    }

    private static JsonNode read() {
        try (var in = SampleEpisodeTest.class.getResourceAsStream("expected.yaml")) {
            return new YAMLMapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Map<Double, String> cues() {
        try {
            Map<Double, String> cues = new TreeMap<>();
            Matcher cue = CUE.matcher(Files.readString(SAMPLE.resolve("narration/main.vtt")));
            while (cue.find()) {
                double start = Integer.parseInt(cue.group(1)) * 3600
                        + Integer.parseInt(cue.group(2)) * 60
                        + Double.parseDouble(cue.group(3));
                cues.put(Math.round(start * 1000) / 1000.0, cue.group(4));
            }
            return cues;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
