package org.misecue.compare;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.spoken.Speech;

/**
 * A table of sentences for each mechanism, with what must come out: {@code sentences.yaml} and every file of the folder
 * {@code sentences}.
 */
class SentencesTest {

    /**
     * What is said over a small recipe.
     *
     * @param lines the ingredients; a line with "#" begins a part
     * @param steps the method
     * @param yield how much it makes, as a recipe writes it
     * @param tin the tin, with its size
     * @param verdicts of the ingredient lines; empty where they are not looked at
     * @param settings the verdicts of oven, times, tin and yield in the order of the recipe; empty as before
     * @param unwritten the ingredients said that no line has; empty as before
     */
    record Case(
            String about,
            @Nullable List<String> lines,
            @Nullable List<String> steps,
            @Nullable String yield,
            @Nullable String tin,
            String said,
            @Nullable List<String> verdicts,
            @Nullable List<String> settings,
            @Nullable List<String> unwritten) {

        String markdown() {
            List<String> method = Optional.ofNullable(steps).orElse(List.of("Mix."));
            return "# Test bake\n\n"
                    + Optional.ofNullable(yield).map(text -> text + "\n\n").orElse("")
                    + Optional.ofNullable(tin)
                            .map(text -> "Tin: " + text + "\n\n")
                            .orElse("")
                    + "## Ingredients\n\n"
                    + Optional.ofNullable(lines).orElse(List.of("300 g spelt grains")).stream()
                            .map(line -> line.startsWith("#") ? "\n##" + line + "\n" : "- " + line)
                            .collect(Collectors.joining("\n"))
                    + "\n\n## Method\n\n"
                    + IntStream.range(0, method.size())
                            .mapToObj(step -> (step + 1) + ". " + method.get(step) + "\n")
                            .collect(Collectors.joining());
        }

        /** Whether what was found is what the row says must come out. */
        boolean comesOut(Comparison found) {
            return is(verdicts, found.written().stream().map(line -> line.verdict()
                            .code()))
                    && is(settings, found.settings().stream().map(setting -> setting.verdict()
                            .code()))
                    && is(unwritten, found.unwritten().stream().map(Unwritten::ingredient));
        }

        private static boolean is(@Nullable List<String> expected, Stream<String> actual) {
            return expected == null || actual.toList().equals(expected);
        }

        @Override
        public String toString() {
            return about + ": " + said;
        }
    }

    static Stream<Case> cases() throws IOException, URISyntaxException {
        Path first = Path.of(Objects.requireNonNull(SentencesTest.class.getResource("sentences.yaml"))
                .toURI());
        try (Stream<Path> more = Files.list(first.resolveSibling("sentences"))) {
            return Stream.concat(Stream.of(first), more.sorted()).flatMap(SentencesTest::read).toList().stream();
        }
    }

    private static Stream<Case> read(Path file) {
        try {
            return new YAMLMapper().readValue(file.toFile(), new TypeReference<List<Case>>() {}).stream();
        } catch (IOException e) {
            throw new AssertionError(file + " cannot be read", e);
        }
    }

    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void judges_a_sentence(Case one) throws IOException {
        Comparison found = Comparer.compare(recipe(one), List.of(Speech.narration(one.said())), Pantry.standard());
        SoftAssertions softly = new SoftAssertions();
        check(softly, one.verdicts(), found, found.written().stream().map(line -> line.verdict()
                .code()));
        check(softly, one.settings(), found, found.settings().stream().map(setting -> setting.verdict()
                .code()));
        check(softly, one.unwritten(), found, found.unwritten().stream().map(Unwritten::ingredient));
        softly.assertAll();
    }

    private static void check(
            SoftAssertions softly, @Nullable List<String> expected, Comparison found, Stream<String> actual) {
        if (expected != null) {
            softly.assertThat(actual).as(() -> CompareJson.of(found, List.of())).isEqualTo(expected);
        }
    }

    private Recipe recipe(Case one) throws IOException {
        return RecipeReader.read(Files.writeString(folder.resolve("recipe.md"), one.markdown()), "recipe.md");
    }
}
