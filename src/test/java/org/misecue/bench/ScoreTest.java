package org.misecue.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.misecue.spoken.Mechanism;

/** The scorer's rules on a case small enough to be scored by hand. */
class ScoreTest {

    private static final String RECIPE =
            "# Oat bars\n\n## Ingredients\n\n- 200 g rolled oats\n- 90 g honey\n- 3 tbsp milk\n\n## Method\n\n1. Mix.\n";
    private static final String NARRATION =
            "[0:05] two hundred grams of rolled oats\n[0:20] and honey sixty grams\n[0:40] a teaspoon of cardamom\n";
    private static final String TRUTH = """
            {"written": [
              {"ingredient": "rolled oats", "amount": 200, "unit": "g", "verdict": "agrees", "at": [5]},
              {"ingredient": "honey", "amount": 90, "unit": "g", "verdict": "agrees", "at": [20]},
              {"ingredient": "milk", "amount": 3, "unit": "tbsp", "verdict": "unspoken", "at": []}],
             "settings": [],
             "unwritten": [{"ingredient": "ground cardamom", "amount": 1, "unit": "tsp", "at": [40]}]}
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void writes_the_case() throws IOException {
        Files.writeString(folder.resolve("recipe.md"), RECIPE);
        Files.writeString(folder.resolve("narration.txt"), NARRATION);
        Files.writeString(folder.resolve("truth.json"), TRUTH);
    }

    @Test
    void counts_what_is_right_and_what_alarms_for_nothing() {
        Score score = Score.of(EpisodeCase.below(folder), EnumSet.allOf(Mechanism.class));
        assertThat(Score.accuracy(score.written())).isCloseTo(2.0 / 3, within(1e-9));
        assertThat(Score.macroF1(score.written())).isCloseTo((2.0 / 3 + 1) / 2, within(1e-9));
        assertThat(score.falseAlarms()).isEqualTo(1);
        assertThat(score.dangerous()).isEmpty();
        assertThat(score.evidence()).isEqualTo(1);
        assertThat(score.unwrittenPrecision()).isEqualTo(1);
        assertThat(score.unwrittenRecall()).isEqualTo(1);
    }

    @Test
    void holds_its_verdicts_in_other_cues() {
        List<EpisodeCase> cut =
                EpisodeCase.below(folder).stream().map(one -> Recut.of(one, 2)).toList();
        assertThat(cut.get(0).cues()).hasSize(7);
        assertThat(Score.accuracy(Score.of(cut, EnumSet.allOf(Mechanism.class)).written()))
                .isCloseTo(2.0 / 3, within(1e-9));
    }

    @Test
    void changes_each_plain_amount_that_agrees() {
        assertThat(Mutations.report(EpisodeCase.below(folder), true))
                .last()
                .isEqualTo("2 changed amounts: caught 1.000, missed 0, still agreeing 0");
    }

    @Test
    void pairs_rows_of_one_name_by_amount_then_by_component() throws IOException {
        List<Row> truth = List.of(
                row("{component: 'cake', ingredient: 'butter', amount: 0.2, unit: 'kg'}"),
                row("{component: 'icing', ingredient: 'butter', amount: 80, unit: 'g'}"));
        List<Row> reported = List.of(
                row("{component: 'icing', ingredient: 'soft butter', amount: 80, unit: 'g'}"),
                row("{component: 'cake', ingredient: 'butter', amount: 200, unit: 'g'}"),
                row("{component: 'cake', ingredient: 'buttermilk', amount: 80, unit: 'g'}"));
        assertThat(Pairing.ofLines(truth, reported)).isEqualTo(Map.of(0, reported.get(1), 1, reported.get(0)));
    }

    private static Row row(String json) throws IOException {
        return Row.of(JsonMapper.builder()
                .enable(JsonReadFeature.ALLOW_UNQUOTED_FIELD_NAMES)
                .enable(JsonReadFeature.ALLOW_SINGLE_QUOTES)
                .build()
                .readTree(json));
    }
}
