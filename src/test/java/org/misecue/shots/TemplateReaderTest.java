package org.misecue.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.misecue.notice.BadInput;

class TemplateReaderTest {

    private static final String GOOD = """
            technique: cream
            words: [Cream, creamed]
            adds: true
            coverage:
              - setup: worktop
                camera: overhead
                see: "{ingredients} going in"
                sound: quiet
                lower-third: "{amounts}"
                takes: 2
                one-chance: true
            hazards:
              - Stop the mixer.
            """;

    @Test
    void a_good_template_is_read_whole() {
        ShotTemplate template = TemplateReader.read("t.yaml", GOOD);
        assertThat(template.words()).containsExactly("cream", "creamed");
        assertThat(template.adds()).isTrue();
        assertThat(template.hazards()).containsExactly("Stop the mixer.");
        assertThat(template.coverage()).singleElement().satisfies(shot -> {
            assertThat(shot.takes()).isEqualTo(2);
            assertThat(shot.oneChance()).isTrue();
            assertThat(shot.hands()).isEmpty();
            assertThat(shot.lowerThird()).contains("{amounts}");
        });
    }

    /** Each row changes one thing in the good template: what is replaced, by what, and the message. */
    @ParameterizedTest
    @CsvFileSource(resources = "template-faults.csv", numLinesToSkip = 1)
    void a_fault_is_told_with_line_column_and_remedy(String replaced, String by, String message) {
        assertThat(GOOD).contains(unescaped(replaced));
        String text = GOOD.replace(unescaped(replaced), by == null ? "" : unescaped(by));
        assertThatThrownBy(() -> TemplateReader.read("t.yaml", text))
                .isInstanceOf(BadInput.class)
                .hasMessage(message);
    }

    @Test
    void an_empty_file_is_told() {
        assertThatThrownBy(() -> TemplateReader.read("t.yaml", ""))
                .isInstanceOf(BadInput.class)
                .hasMessage("t.yaml: the file is empty; a shot template begins with \"technique:\".");
    }

    private static String unescaped(String cell) {
        return cell.replace("\\n", "\n");
    }
}
