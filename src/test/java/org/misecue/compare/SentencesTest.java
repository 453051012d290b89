package org.misecue.compare;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Speech;

/** A table of sentences for each mechanism; the truth stands beside them in {@code sentences.yaml}. */
class SentencesTest {

    record Case(String about, List<String> lines, String said, List<String> verdicts) {
        @Override
        public String toString() {
            return about + ": " + said;
        }
    }

    static Stream<Case> cases() throws IOException {
        List<Case> cases = new YAMLMapper()
                .readValue(SentencesTest.class.getResourceAsStream("sentences.yaml"), new TypeReference<>() {});
        return cases.stream();
    }

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void judges_a_sentence(Case one) throws IOException {
        Comparison comparison =
                Comparer.compare(recipe(one.lines()), List.of(Speech.narration(one.said())), Pantry.standard());
        assertThat(comparison.written().stream().map(line -> line.verdict().code()))
                .as(() -> CompareText.of(comparison))
                .isEqualTo(one.verdicts());
    }

    private Recipe recipe(List<String> lines) throws IOException {
        String list = lines.stream()
                .map(line -> line.startsWith("#") ? "\n##" + line + "\n" : "- " + line)
                .collect(Collectors.joining("\n"));
        Path file = Files.writeString(
                folder.resolve("recipe.md"), "# Test bake\n\n## Ingredients\n\n" + list + "\n\n## Method\n\n1. Mix.\n");
        return RecipeReader.read(file, "recipe.md");
    }
}
