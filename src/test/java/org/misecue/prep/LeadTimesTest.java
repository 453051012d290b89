package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.Note;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.RecipeReader;
import org.misecue.scale.Batch;
import org.misecue.scale.ScaleRules;
import org.misecue.scale.Scaler;

/** From a recipe as somebody writes it to what must be begun before the first shot. */
class LeadTimesTest {

    private static final LocalDateTime TEN = LocalDateTime.parse("2026-03-10T10:00");
    private static final PrepSettings AT_TEN = PrepSettings.standard().withFirstShot(TEN);

    @TempDir
    Path folder;

    private PrepPlan plan(String list, String method, PrepSettings settings) {
        String text = "# Invented bake\n\nMakes 8 slices\n\n## Ingredients\n\n- " + list.replace("; ", "\n- ")
                + "\n\n## Method\n\n" + numbered(method);
        try {
            Path file = Files.writeString(folder.resolve("recipe.md"), text);
            Pantry pantry = Pantry.standard();
            Recipe recipe = RecipeReader.read(file, "recipe.md", pantry);
            return PrepPlanner.plan(
                    Scaler.scale(recipe, Batch.WRITTEN, ScaleRules.standard(), pantry), pantry, settings);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static String numbered(String method) {
        StringBuilder out = new StringBuilder();
        int number = 0;
        for (String step : method.split(" / ")) {
            number++;
            out.append(number).append(". ").append(step).append('\n');
        }
        return out.toString();
    }

    private static Job job(PrepPlan plan, String start) {
        return plan.jobs().stream()
                .filter(job -> job.what().startsWith(start))
                .findFirst()
                .orElseThrow(() -> new AssertionError(start + " is not among " + plan.jobs()));
    }

    /** Bench times: common practice, no source. */
    @ParameterizedTest(name = "{0} → {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "175 g butter, softened                 | Beat the butter.                     | Take the butter out of the fridge      | PT2H",
                "175 g butter, cubed and softened       | Beat the butter.                     | Cut the butter into cubes              | PT30M",
                "3 eggs, at room temperature            | Beat the eggs.                       | Take the eggs out of the fridge        | PT30M",
                "200 g cream cheese, at room temperature | Beat the cream cheese.              | Take the cream cheese out              | PT1H",
                "200 ml double cream, at room temperature | Stir in the double cream.          | Take the double cream out              | PT30M",
                "100 ml milk, at room temperature       | Stir in the milk.                    | Take the milk out of the fridge        | PT30M",
                "250 ml milk, soured with 1 tbsp lemon juice | Stir in the milk.               | Stir the acid into the milk            | PT15M",
                "200 ml sparkling wine, chilled         | Stir in the wine.                    | Put the sparkling wine into the fridge | PT4H",
                "100 ml strong coffee, cooled           | Stir in the coffee.                  | Make the coffee ready                  | PT30M",
                "150 g sultanas, soaked overnight       | Fold in the sultanas.                | Put the sultanas to soak               | PT12H",
                "200 g plain flour                      | Grease and line a 20 cm round cake tin. Sift in the flour. Bake at 180 °C for 30 minutes. | Have ready, greased and lined | PT15M",
                "200 g plain flour                      | Line a baking tray with parchment. Shape the flour. Bake at 180 °C for 12 minutes. | Line or grease the tin or tray as step 1 says | PT15M",
                "200 g plain flour                      | Heat the oven to 200 °C. Sift the flour. / Bake for 30 minutes. | Heat the oven to 200 °C | PT30M",
            })
    void what_takes_time_is_begun_ahead_with_a_clock_time_and_a_reason(
            String list, String method, String what, Duration before) {
        Job job = job(plan(list, method, AT_TEN), what);
        assertThat(job.before()).isEqualTo(before);
        assertThat(job.at()).isPresent();
        assertThat(job.why()).isNotBlank();
    }

    /** US Department of Agriculture: 2 hours, 1 hour above 90 °F. */
    @ParameterizedTest
    @CsvSource({
        "'3 eggs, at room temperature', Take the eggs, 2026-03-10T11:30",
        "'200 g cream cheese, at room temperature', Take the cream cheese, 2026-03-10T11:00",
        "'200 g butter, softened', Take the butter, 2026-03-10T10:00",
        "'200 ml double cream', Weigh and label the chilled bowl 1, 2026-03-10T11:58",
    })
    void chilled_food_that_is_taken_out_has_a_latest_time(String list, String what, LocalDateTime latest) {
        Job job = job(plan(list, "Beat everything until smooth.", AT_TEN), what);
        assertThat(job.limit()).isPresent();
        assertThat(job.limit().get().by()).contains(latest);
        assertThat(PrepWords.limit(job)).contains("2 h after it came out", "1 h where it is hotter than 32 °C");
        assertThat(RoomLimit.SOURCE).contains("US Department of Agriculture", "local food law decides");
    }

    @Test
    void what_would_stand_out_too_long_is_told_with_a_way_out() {
        String method = "Beat the butter. / Knead and prove for 90 minutes. / Spread with the rest of the butter.";
        Job job = job(plan("200 g butter, softened", method, AT_TEN), "Take the butter");
        assertThat(job.limit().orElseThrow().advice())
                .contains("It would be out for 3 h", "in lots", "back in the fridge", "no exception for butter");
        Job eggs = job(plan("3 eggs, at room temperature", "Beat the eggs.", AT_TEN), "Take the eggs");
        assertThat(eggs.limit().orElseThrow().advice()).isEmpty();
    }

    @Test
    void dried_fruit_that_soaks_has_no_limit() {
        Job job = job(plan("150 g sultanas, soaked", "Fold in the sultanas.", AT_TEN), "Put the sultanas");
        assertThat(job.limit()).isEmpty();
    }

    private static final String TWO_HEATS =
            "Heat the oven to 220 °C. Roast the plums for 20 minutes. / Turn the oven down to 160 °C. Beat the eggs."
                    + " / Bake for 40 minutes.";

    @Test
    void one_oven_for_two_temperatures_is_told_with_both_steps() {
        PrepPlan plan = plan("500 g plums; 3 eggs", TWO_HEATS, AT_TEN);
        assertThat(plan.notes()).extracting(Note::toString).anySatisfy(note -> assertThat(note)
                .startsWith("recipe.md:")
                .contains("the one oven must change from 220 °C after step 1 to 160 °C before step 3")
                .contains("step 3 may have to wait"));
        assertThat(job(plan, "Heat the oven to 160 °C").why()).contains("after step 1 to 160 °C before step 3");
    }

    @Test
    void two_ovens_have_a_temperature_each() {
        PrepPlan plan = plan("500 g plums; 3 eggs", TWO_HEATS, AT_TEN.withOvens(2));
        assertThat(plan.notes()).noneMatch(note -> note.sentence().contains("oven"));
        assertThat(job(plan, "Heat the oven to 160 °C").why()).doesNotContain("change");
    }

    @Test
    void an_oven_that_one_step_turns_down_itself_is_heated_once() {
        PrepPlan plan = plan(
                "3 eggs",
                "Heat the oven to 220 °C. / Bake for 10 minutes, then at 180 °C for 20 minutes more.",
                AT_TEN);
        assertThat(plan.jobs())
                .filteredOn(job -> job.what().startsWith("Heat the oven"))
                .hasSize(1);
        assertThat(plan.notes())
                .anyMatch(note -> note.sentence().equals("step 2 itself takes the oven from 220 °C to 180 °C"));
    }
}
