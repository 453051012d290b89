package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.misecue.pantry.Pantry;

/**
 * Invented methods with what a cook judged of them by hand before this code was run on them: which step needs which, and
 * the waits that each step states. A need that is missed makes a day that cannot be cooked; one too many only makes it
 * longer.
 */
class MethodTruthTest {

    private static final Path METHODS = Path.of("src/test/resources/org/misecue/recipe/methods");
    private static final ObjectMapper MAPPER = new ObjectMapper();

    static List<Path> methods() throws IOException {
        try (Stream<Path> folders = Files.list(METHODS)) {
            return folders.sorted().toList();
        }
    }

    private static Recipe recipe(Path folder) {
        return RecipeReader.read(folder.resolve("recipe.md"), "recipe.md", Pantry.standard());
    }

    @ParameterizedTest
    @MethodSource("methods")
    void no_step_comes_before_one_that_it_needs(Path folder) throws IOException {
        JsonNode truth = MAPPER.readTree(folder.resolve("truth.json").toFile());
        Recipe recipe = recipe(folder);
        MethodOrder order = MethodOrder.of(recipe);
        List<String> missed = new ArrayList<>();
        truth.path("needs").properties().forEach(row -> {
            int step = Integer.parseInt(row.getKey());
            Set<Integer> before = new TreeSet<>(order.allBefore(step));
            row.getValue().forEach(need -> {
                boolean oven = isOnlyHeating(recipe, need.asInt()) || turnsTheOven(recipe, step);
                if (!oven && !before.contains(need.asInt())) {
                    missed.add(step + " needs " + need.asInt());
                }
            });
        });
        assertThat(missed).isEmpty();
    }

    /** The oven is no work that another waits for in the method's order: each bake heats it. */
    private static boolean isOnlyHeating(Recipe recipe, int step) {
        return recipe.steps().get(step - 1).techniques().equals(List.of("heat-oven"));
    }

    /** "Turn the oven up" asks that the bake before is out: that is a matter of the oven, which the day sees to. */
    private static boolean turnsTheOven(Recipe recipe, int step) {
        return recipe.steps().get(step - 1).text().startsWith("Turn the oven");
    }

    @ParameterizedTest
    @MethodSource("methods")
    void a_wait_that_is_stated_is_as_long_as_it_says_and_where(Path folder) throws IOException {
        JsonNode truth = MAPPER.readTree(folder.resolve("truth.json").toFile());
        MethodOrder order = MethodOrder.of(recipe(folder));
        List<String> expected = new ArrayList<>();
        List<String> found = new ArrayList<>();
        truth.path("waits").properties().forEach(row -> row.getValue()
                .forEach(wait -> expected.add("%s: %s, %s"
                        .formatted(
                                row.getKey(),
                                Duration.parse(wait.path("most").asText()),
                                wait.path("where").asText()))));
        order.stretches().forEach(stretch -> stretch.waits().stream()
                .filter(Wait::stated)
                .forEach(wait -> found.add("%d: %s, %s"
                        .formatted(
                                stretch.step(), wait.most(), wait.where().name().toLowerCase(Locale.ROOT)))));

        assertThat(found).containsAll(expected);
    }
}
