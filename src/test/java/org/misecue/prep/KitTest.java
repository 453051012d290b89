package org.misecue.prep;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;

class KitTest {

    /** The techniques that a step can list; those in capitals are only waits. */
    private static List<String> techniques() {
        try (InputStream in = Objects.requireNonNull(Recipe.class.getResourceAsStream("techniques.csv"))) {
            return new String(in.readAllBytes(), UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.substring(0, line.indexOf('|')).strip())
                    .filter(key -> key.equals(key.toLowerCase(java.util.Locale.ROOT)))
                    .toList();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void every_technique_has_its_tools_or_says_that_it_needs_none() {
        assertThat(techniques()).hasSizeGreaterThan(50);
        assertThat(KitList.known()).containsAll(techniques());
    }

    @Test
    void no_row_is_for_a_technique_that_does_not_exist() {
        assertThat(techniques()).containsAll(KitList.known());
    }

    @ParameterizedTest
    @CsvSource({
        "laminate, rolling pin",
        "pipe, piping bag",
        "temper, probe thermometer",
        "blend, blender or food processor",
        "press, flat-bottomed glass",
        "torch, kitchen blowtorch",
    })
    void a_technique_puts_its_tool_on_the_list_with_its_step(String technique, String tool) {
        TestKitchen kitchen = new TestKitchen("Invented").component("").step("Work.", technique, 5, 0);
        assertThat(PrepPlanner.plan(kitchen.asWritten(), Pantry.standard(), PrepSettings.standard())
                        .kit())
                .contains(new KitItem(tool, List.of(1)));
    }
}
