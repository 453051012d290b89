package org.misecue.sample;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.align.Aligner;
import org.misecue.align.Alignment;
import org.misecue.compare.Comparer;
import org.misecue.compare.Comparison;
import org.misecue.compare.Evidence;
import org.misecue.compare.LineVerdict;
import org.misecue.compare.SettingVerdict;
import org.misecue.narration.Narration;
import org.misecue.narration.NarrationReader;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;

/** The whole journey on the sample episode, held against {@code expected.yaml}, which was written before the engine ran. */
class SampleVerdictsTest {

    private static final Path SAMPLE = Path.of("sample-project");
    private static final Recipe RECIPE = RecipeReader.read(SAMPLE.resolve("recipe.md"), "recipe.md");
    private static final Narration NARRATION =
            NarrationReader.read(SAMPLE.resolve("narration/main.vtt"), "narration/main.vtt");
    private static final Comparison COMPARISON = Comparer.compare(RECIPE, List.of(NARRATION), Pantry.standard());
    private static final JsonNode EXPECTED = expected();

    /** How far a shown moment may lie from the cue that holds the deciding words: one cue, about ten seconds. */
    private static final double ONE_CUE = 14;

    static Stream<JsonNode> lines() {
        return rows("written");
    }

    static Stream<JsonNode> settings() {
        return rows("settings");
    }

    @ParameterizedTest
    @MethodSource("lines")
    void every_line_gets_the_verdict_it_was_written_for(JsonNode row) {
        LineVerdict verdict = COMPARISON.written().stream()
                .filter(line -> line.line().text().equals(row.get("line").asText()))
                .findFirst()
                .orElseThrow();
        assertThat(verdict.verdict().code())
                .as(verdict.reason())
                .isEqualTo(row.get("verdict").asText());
        assertMoments(row, verdict.evidence());
    }

    @ParameterizedTest
    @MethodSource("settings")
    void every_setting_gets_the_verdict_it_was_written_for(JsonNode row) {
        SettingVerdict verdict = COMPARISON.settings().stream()
                .filter(setting ->
                        setting.setting().kind().code().equals(row.get("kind").asText())
                                && setting.setting().step() == row.get("step").asInt()
                                && setting.setting()
                                        .quantity()
                                        .amount()
                                        .least()
                                        .equals(java.util.Optional.of(
                                                Rationals.of(row.get("amount").asText()))))
                .findFirst()
                .orElseThrow();
        assertThat(verdict.verdict().code())
                .as(verdict.reason())
                .isEqualTo(row.get("verdict").asText());
        assertMoments(row, verdict.evidence());
    }

    @Test
    void what_was_added_without_being_written_is_found_and_nothing_else() {
        List<String> expected =
                rows("unwritten").map(row -> row.get("ingredient").asText()).toList();
        assertThat(COMPARISON.unwritten())
                .extracting(unwritten -> unwritten.ingredient())
                .isEqualTo(expected);
    }

    @Test
    void steps_begin_within_half_a_minute_of_where_they_do() {
        Alignment alignment = Aligner.align(RECIPE, List.of(NARRATION), Pantry.standard());
        Map<Integer, Double> begin = new TreeMap<>();
        RECIPE.steps().forEach(step -> alignment
                .begin(step.number())
                .ifPresent(span -> begin.put(step.number(), seconds(span.start()))));
        List<String> far = new ArrayList<>();
        EXPECTED.get("steps").properties().forEach(step -> {
            double at = begin.getOrDefault(Integer.parseInt(step.getKey()), -99.0);
            if (Math.abs(at - step.getValue().asDouble()) > 30) {
                far.add(step + " found at " + at);
            }
        });
        assertThat(far).isEmpty();
    }

    private static void assertMoments(JsonNode row, List<Evidence> evidence) {
        if (row.get("at").isEmpty()) {
            assertThat(evidence).isEmpty();
            return;
        }
        boolean hit = StreamSupport.stream(row.get("at").spliterator(), false)
                .anyMatch(at -> evidence.stream().anyMatch(one -> {
                    double gap = seconds(one.moment().at()) - at.asDouble();
                    return gap > -3 && gap < ONE_CUE;
                }));
        assertThat(hit).as("%s: %s", row, evidence).isTrue();
    }

    private static double seconds(Duration time) {
        return time.toMillis() / 1000.0;
    }

    private static Stream<JsonNode> rows(String list) {
        return StreamSupport.stream(EXPECTED.get(list).spliterator(), false);
    }

    private static JsonNode expected() {
        try {
            return new YAMLMapper().readTree(SampleVerdictsTest.class.getResourceAsStream("expected.yaml"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
