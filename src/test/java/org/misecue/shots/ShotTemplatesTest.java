package org.misecue.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.notice.BadInput;

class ShotTemplatesTest {

    private static final Path FOLDER = Path.of("shot-templates");

    @TempDir
    Path episode;

    static List<Path> files() throws IOException {
        try (Stream<Path> entries = Files.list(FOLDER)) {
            return entries.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void every_template_keeps_to_the_schema_and_is_named_after_its_technique(Path file) throws IOException {
        JsonSchema schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                .getSchema(Files.readString(FOLDER.resolve("schema.json")));
        assertThat(schema.validate(new ObjectMapper(new YAMLFactory()).readTree(file.toFile())))
                .isEmpty();
        ShotTemplate template = TemplateReader.read(file.toString(), Files.readString(file));
        assertThat(file).hasFileName(template.technique() + ".yaml");
    }

    @Test
    void the_guide_explains_every_key_choice_and_blank() throws IOException {
        String guide = Files.readString(Path.of("src/docs/shot-templates.md"));
        JsonNode schema =
                new ObjectMapper().readTree(FOLDER.resolve("schema.json").toFile());
        Stream.of("/properties", "/$defs/shot/properties", "/$defs/hazard/properties")
                .forEach(part -> schema.at(part).properties().forEach(key -> {
                    assertThat(guide).contains("| `" + key.getKey() + "` |");
                    key.getValue().path("enum").forEach(choice -> assertThat(guide)
                            .contains("`" + choice.asText() + "`"));
                }));
        Blanks.NAMES.forEach(blank -> assertThat(guide).contains("| `{" + blank + "}` |"));
    }

    @ParameterizedTest
    @MethodSource("techniques")
    void every_technique_that_a_method_may_have_has_a_template_in_the_program(String technique) {
        assertThat(ShotTemplates.standard().has(technique)).isTrue();
    }

    /** The keys in small letters of the recipe reader's table, and what belongs to no step or to a time only. */
    static List<String> techniques() throws IOException {
        Path table = Path.of("src/main/resources/org/misecue/recipe/techniques.csv");
        Stream<String> ofSteps = Files.readAllLines(table).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(" \\| ")[0])
                .filter(key -> key.equals(key.toLowerCase(Locale.ROOT)));
        return Stream.concat(ofSteps, Stream.of("kitchen", "welcome", "ingredients-line-up", "reveal", "rest"))
                .toList();
    }

    @Test
    void the_templates_that_words_tell_are_those_that_have_words() throws IOException {
        List<String> withWords = files().stream()
                .map(file -> TemplateReader.read(file.toString(), text(file)))
                .filter(template -> !template.words().isEmpty())
                .map(ShotTemplate::technique)
                .toList();
        assertThat(ShotTemplates.standard().toldByWords())
                .extracting(ShotTemplate::technique)
                .containsExactlyElementsOf(withWords);
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void a_technique_without_a_template_is_filmed_plainly() {
        assertThat(ShotTemplates.standard().has("flambe")).isFalse();
        assertThat(ShotTemplates.standard().of("flambe").technique()).isEqualTo("default");
    }

    @Test
    void an_episode_may_bring_its_own_template_under_any_file_name() throws IOException {
        Files.writeString(episode.resolve("our-way.yaml"), """
                technique: cream
                coverage:
                  - setup: garden table
                    camera: from the tree
                    see: everything
                    sound: birds
                """);
        ShotTemplates templates = ShotTemplates.withOwn(episode);
        assertThat(templates.of("cream").coverage()).extracting(Coverage::setup).containsExactly("garden table");
        assertThat(templates.of("fold").coverage()).extracting(Coverage::setup).startsWith("worktop overhead");
    }

    @Test
    void an_episode_without_such_a_folder_uses_the_program_s() {
        assertThat(ShotTemplates.withOwn(episode.resolve("none")).has("cream")).isTrue();
    }

    @Test
    void two_templates_for_one_technique_are_refused() throws IOException {
        String text = Files.readString(FOLDER.resolve("cream.yaml"));
        Files.writeString(episode.resolve("a.yaml"), text);
        Files.writeString(episode.resolve("b.yaml"), text);
        assertThatThrownBy(() -> ShotTemplates.withOwn(episode))
                .isInstanceOf(BadInput.class)
                .hasMessageEndingWith(
                        "/b.yaml: “cream” has a template in " + episode.getFileName() + "/a.yaml already; keep one.");
    }

    @Test
    void a_binary_file_and_a_huge_one_are_refused() throws IOException {
        Files.write(episode.resolve("photo.yaml"), new byte[] {(byte) 0xff, (byte) 0xd8, 0, 1});
        assertThatThrownBy(() -> ShotTemplates.withOwn(episode))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("photo.yaml: the file is not UTF-8 text");
        Files.writeString(episode.resolve("photo.yaml"), "x".repeat(70_000));
        assertThatThrownBy(() -> ShotTemplates.withOwn(episode))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("over 64 KB");
    }
}
