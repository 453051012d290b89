package org.misecue.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.misecue.notice.BadInput;

class TemplateReaderTest {

    private static final String GOOD = """
            technique: cream
            words: [Cream, creamed ... up]
            adds: around
            cooks: true
            coverage:
              - kind: action
                setup: worktop
                camera: overhead
                see: "{ingredients} going in"
                sound: quiet
                lower-third: "{amounts} · 5 minutes"
                takes: 2
                one-chance: true
            hazards:
              - what: mixer
                care: stop it
                holds: [egg]
            """;

    private static JsonSchema schema() throws IOException {
        return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(Path.of("shot-templates/schema.json")));
    }

    @Test
    void a_good_template_is_read_whole_and_keeps_to_the_schema() throws IOException {
        ShotTemplate template = TemplateReader.read("t.yaml", GOOD);
        assertThat(template.words()).extracting(MethodPhrase::words).containsExactly("Cream", "creamed ... up");
        assertThat(template.adds()).isEqualTo(Adds.AROUND);
        assertThat(template.cooks()).isTrue();
        assertThat(template.hazards()).singleElement().satisfies(rule -> {
            assertThat(rule.hazard()).hasToString("Mixer: stop it");
            assertThat(rule.holds()).containsExactly("egg");
        });
        assertThat(template.coverage()).singleElement().satisfies(shot -> {
            assertThat(shot.takes()).isEqualTo(2);
            assertThat(shot.oneChance()).isTrue();
            assertThat(shot.early()).isFalse();
            assertThat(shot.kind()).isEqualTo(ShotKind.ACTION);
            assertThat(shot.only()).isEqualTo(Only.ALWAYS);
            assertThat(shot.hands()).isEmpty();
            assertThat(shot.lowerThird()).contains("{amounts} · 5 minutes");
        });
        assertThat(schema().validate(new ObjectMapper(new YAMLFactory()).readTree(GOOD)))
                .isEmpty();
    }

    /**
     * Each row changes one thing in the good template: what is replaced, by what, and the message. The schema refuses it
     * too, save where it is no YAML or a key stands twice, which no schema sees, and a "yes", which some YAML takes for true.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "template-faults.csv", numLinesToSkip = 1)
    void a_fault_is_told_with_line_column_and_remedy_and_the_schema_refuses_it_too(
            String replaced, String by, String message) throws IOException {
        assertThat(GOOD).contains(unescaped(replaced));
        String text = GOOD.replace(unescaped(replaced), by == null ? "" : unescaped(by));
        assertThatThrownBy(() -> TemplateReader.read("t.yaml", text))
                .isInstanceOf(BadInput.class)
                .hasMessage(message);
        if (!message.contains("this is not YAML") && !message.matches(".*(stands twice|not “yes”).*")) {
            assertThat(schema().validate(tree(text))).as(text).isNotEmpty();
        }
    }

    private static JsonNode tree(String text) throws JsonProcessingException {
        return new ObjectMapper(new YAMLFactory()).readTree(text);
    }

    @Test
    void an_empty_file_is_told() {
        assertThatThrownBy(() -> TemplateReader.read("t.yaml", ""))
                .isInstanceOf(BadInput.class)
                .hasMessage("t.yaml: the file is empty; a shot template begins with “technique:”.");
    }

    private static String unescaped(String cell) {
        return cell.replace("\\n", "\n");
    }
}
