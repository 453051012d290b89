package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.misecue.notice.BadInput;

/**
 * The same signs thousands of times over, as a fuzzer found them and as a slipped key writes them: what is tried from each
 * of them on to the last takes minutes, and what calls itself for each of them runs out of stack.
 */
class LongRunsTest {

    private static final int LENGTH = 15_000;
    private static final long MOST_NANOS = 8_000_000_000L;

    @TempDir
    Path folder;

    static Stream<Arguments> runs() {
        return Stream.of(
                        "9",
                        "5 ",
                        "\u00a0",
                        " ",
                        "large ",
                        "eggs ",
                        "1a",
                        "1 x ",
                        "20x",
                        "the rest of the ",
                        "200 g ",
                        "or ",
                        "about ",
                        "roast ",
                        "dry mix, the flour, ",
                        "butter, ",
                        "and flour ",
                        "the ",
                        "000,")
                .flatMap(run -> Stream.of(
                                "# Rolls\n\n%s\n\n## Ingredients\n\n- 200 g flour\n\n## Method\n\n1. Mix.\n",
                                "# Rolls\n\n## Ingredients\n\n- 200 g flour\n- %s\n\n## Method\n\n1. Mix.\n",
                                "# Rolls\n\n## Ingredients\n\n- 200 g flour\n\n## Method\n\n1. Mix in a tin %s.\n",
                                "# Rolls\n\n## Ingredients\n\n- 200 g flour\n\n## Method\n\n1. Heat%sthe oven and bake until set. Cut.\n",
                                "# Rolls\n\n## Ingredients\n\n- 200 g flour\n\n## Method\n\n1. Mix in a 20 cm tin, %s9 cm deep.\n",
                                "# Rolls\n\n## Ingredients\n\n- 200 g flour\n\n## Method\n\n1. Add %s flour.\n")
                        .map(recipe -> Arguments.of(run, recipe)));
    }

    @ParameterizedTest(name = "[{index}] {0}")
    @MethodSource("runs")
    void the_same_signs_over_and_over_are_read_or_refused_within_seconds(String run, String recipe) throws IOException {
        readsOrRefuses("recipe.md", recipe.formatted(run.repeat(LENGTH / run.length())));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"Subject: ", "Re: ", "> ", "A "})
    void a_mail_that_was_answered_too_often_is_read_or_refused(String run) throws IOException {
        readsOrRefuses(
                "recipe.txt",
                "Subject: %s\n\nIngredients\n\n200 g flour\n\nMethod\n\nMix.\n"
                        .formatted(run.repeat(LENGTH / run.length())));
    }

    private void readsOrRefuses(String name, String recipe) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, recipe);
        long start = cpu();
        try {
            assertThat(RecipeReader.read(file, "r").lines()).isNotEmpty();
        } catch (BadInput refused) {
            assertThat(refused).hasMessageStartingWith("r: ");
        }
        assertThat(cpu() - start).as("nanoseconds of work").isLessThan(MOST_NANOS);
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
