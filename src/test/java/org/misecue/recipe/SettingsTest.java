package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.misecue.quantity.QuantityWriter;

class SettingsTest {

    @ParameterizedTest(name = "{1}")
    @CsvFileSource(resources = "settings.csv", delimiter = '|', quoteCharacter = '\0')
    void figures_in_a_text_are_understood(String kind, String text, String expected) {
        List<Setting> settings =
                switch (kind) {
                    case "oven" -> OvenReader.read(Wording.of(text), 1, 1);
                    case "time" -> DurationReader.read(Techniques.standard().in(Wording.of(text)), 1, 1);
                    case "tin" -> TinReader.read(Wording.of(text), 1, 1);
                    default -> YieldReader.read(Wording.of(text), 0, 1).stream().toList();
                };
        assertThat(settings.stream().map(SettingsTest::shown).collect(Collectors.joining("; ")))
                .isEqualTo(expected == null ? "" : expected);
    }

    static String shown(Setting setting) {
        String also = setting.also().stream()
                .map(each -> ", " + (oven(setting) ? "also " : "") + QuantityWriter.text(each))
                .collect(Collectors.joining());
        String fan =
                setting.fan().map(each -> ", fan " + QuantityWriter.text(each)).orElse("");
        String count = setting.count() > 1 ? setting.count() + " × " : "";
        String what = oven(setting) || setting.what().isEmpty() ? "" : " " + setting.what();
        String deep = setting.depth()
                .map(each -> ", " + QuantityWriter.text(each) + " deep")
                .orElse("");
        return count + QuantityWriter.text(setting.quantity()) + fan + also + what + deep;
    }

    private static boolean oven(Setting setting) {
        return setting.kind() == Setting.Kind.OVEN_TEMPERATURE;
    }
}
