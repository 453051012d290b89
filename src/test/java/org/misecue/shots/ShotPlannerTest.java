package org.misecue.shots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.quantity.Unit.EACH;
import static org.misecue.quantity.Unit.GRAM;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.misecue.pantry.Pantry;
import org.misecue.prep.Bowl;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.PrepPlanner;
import org.misecue.prep.PrepSettings;
import org.misecue.prep.Swirls;
import org.misecue.prep.TestKitchen;

class ShotPlannerTest {

    private static PrepPlan prep(TestKitchen kitchen, int takes) {
        return PrepPlanner.plan(
                kitchen.asWritten(), Pantry.standard(), PrepSettings.standard().withTakes(takes));
    }

    private static List<Shot> shots(TestKitchen kitchen, int takes) {
        return ShotPlanner.plan(kitchen.asWritten(), prep(kitchen, takes), ShotTemplates.standard())
                .shots();
    }

    private static List<Shot> ofSteps(List<Shot> shots) {
        return shots.stream()
                .filter(shot -> shot.step() > 0 && shot.kind() == ShotKind.ACTION)
                .toList();
    }

    private static TestKitchen sponge() {
        return new TestKitchen("Sponge")
                .component("")
                .line("125", GRAM, "unsalted butter", "softened")
                .line("125", GRAM, "caster sugar", "")
                .line("2", EACH, "eggs", "")
                .line("125", GRAM, "self-raising flour", "")
                .step(
                        "Cream the butter and sugar, then beat in the eggs one at a time and fold in the flour.",
                        "cream beat fold",
                        10,
                        0,
                        "0/0",
                        "0/1",
                        "0/2",
                        "0/3");
    }

    @Test
    void the_ingredients_come_first_and_the_reveal_last() {
        List<Shot> shots = shots(Swirls.recipe(), 1);
        assertThat(shots)
                .extracting(Shot::technique)
                .startsWith("kitchen", "kitchen", "welcome", "ingredients-line-up")
                .endsWith("reveal", "reveal", "reveal");
        assertThat(shots.get(3).bowls()).hasSize(15);
        assertThat(shots)
                .extracting(Shot::number)
                .isEqualTo(java.util.stream.IntStream.rangeClosed(1, shots.size())
                        .boxed()
                        .toList());
    }

    @Test
    void each_ingredient_stands_ready_for_the_action_it_goes_in_with() {
        List<Shot> shots = shots(sponge(), 1);
        assertThat(shots)
                .filteredOn(shot -> shot.technique().equals("cream"))
                .extracting(Shot::bowls)
                .containsOnly(List.of(1, 2));
        assertThat(shots)
                .filteredOn(shot -> shot.technique().equals("beat"))
                .extracting(Shot::bowls)
                .containsExactly(List.of(3));
        assertThat(shots)
                .filteredOn(shot -> shot.technique().equals("fold") && shot.kind() == ShotKind.ACTION)
                .extracting(Shot::bowls)
                .containsExactly(List.of(4));
    }

    @Test
    void quantities_are_said_once_and_in_words() {
        List<Shot> shots = shots(sponge(), 1);
        assertThat(shots)
                .extracting(Shot::say)
                .filteredOn(say -> !say.isEmpty())
                .containsExactly(
                        "Sponge",
                        "one hundred and twenty-five grams of unsalted butter and one hundred and twenty-five grams of caster"
                                + " sugar",
                        "two eggs",
                        "one hundred and twenty-five grams of self-raising flour");
    }

    @Test
    void what_goes_in_by_additions_is_said_and_shown_whole_and_stands_ready_in_its_bowls() {
        TestKitchen kitchen = new TestKitchen("Batter")
                .component("")
                .line("100", GRAM, "caster sugar", "")
                .line("2", EACH, "eggs", "")
                .step("Whisk the eggs, adding the sugar in three additions.", "whisk", 10, 0, "0/0", "0/1");
        assertThat(shots(kitchen, 1))
                .filteredOn(shot -> shot.technique().equals("whisk") && shot.kind() == ShotKind.ACTION)
                .singleElement()
                .satisfies(shot -> {
                    assertThat(shot.bowls()).hasSize(4);
                    assertThat(shot.say()).contains("one hundred grams of caster sugar in three additions");
                    assertThat(shot.lowerThird()).contains("100 g caster sugar").doesNotContain("33");
                    assertThat(shot.see()).contains("caster sugar").doesNotContain("addition");
                });
    }

    @Test
    void an_ingredient_goes_in_where_the_method_calls_it_by_the_first_word_of_its_name() {
        TestKitchen kitchen = new TestKitchen("Filling")
                .component("")
                .line("100", GRAM, "unsalted butter", "")
                .line("200", GRAM, "icing sugar", "")
                .line("5", GRAM, "vanilla extract", "")
                .step(
                        "Cream the butter until soft, then beat in the icing sugar and vanilla.",
                        "cream beat",
                        10,
                        0,
                        "0/0",
                        "0/1",
                        "0/2");
        assertThat(ofSteps(shots(kitchen, 1)))
                .filteredOn(shot -> shot.technique().equals("beat"))
                .singleElement()
                .satisfies(shot -> assertThat(shot.see()).contains("icing sugar and vanilla extract"));
    }

    @Test
    void it_is_what_the_step_is_at_and_not_what_an_earlier_one_made() {
        TestKitchen kitchen = new TestKitchen("Glazed loaf")
                .component("")
                .line("60", GRAM, "honey", "")
                .step("Shape the dough.", "shape", 1, 0)
                .step("Warm the honey and brush it over the loaf.", "warm brush", 1, 0, "0/0");
        assertThat(ofSteps(shots(kitchen, 1)))
                .filteredOn(shot -> shot.technique().equals("brush"))
                .singleElement()
                .satisfies(shot -> assertThat(shot.see()).startsWith("the honey brushed"));
    }

    @Test
    void what_is_put_together_is_called_as_in_the_method() {
        TestKitchen kitchen = new TestKitchen("Pairs")
                .component("")
                .step("Stir the syrup for the filling.", "stir", 1, 0)
                .step("Sandwich the cakes in pairs with the filling.", "sandwich", 1, 0);
        assertThat(ofSteps(shots(kitchen, 1)))
                .filteredOn(shot -> shot.technique().equals("sandwich"))
                .singleElement()
                .satisfies(shot -> assertThat(shot.see()).startsWith("the cakes: the filling"));
    }

    @Test
    void what_belongs_to_no_step_opens_or_closes_the_list_and_stands_nowhere_between() {
        List<Integer> steps = shots(Swirls.recipe(), 2).stream().map(Shot::step).toList();
        int first = steps.stream()
                .filter(step -> step > 0)
                .findFirst()
                .map(steps::indexOf)
                .orElseThrow();
        int last = steps.size() - 1;
        while (steps.get(last) == 0) {
            last--;
        }
        assertThat(first).isPositive();
        assertThat(last).isLessThan(steps.size() - 1);
        assertThat(steps.subList(first, last + 1)).doesNotContain(0);
    }

    @Test
    void oven_and_times_are_said_where_they_are_set() {
        assertThat(shots(Swirls.recipe(), 1))
                .filteredOn(shot -> shot.technique().equals("bake"))
                .first()
                .satisfies(shot -> assertThat(shot.say())
                        .isEqualTo(
                                "oven at one hundred and eighty degrees Celsius, fan oven at one hundred and sixty degrees"
                                        + " Celsius, bake for twenty-five minutes"));
    }

    @Test
    void every_bowl_that_a_step_uses_is_needed_in_a_shot_of_that_step() {
        PrepPlan prep = prep(Swirls.recipe(), 1);
        List<Shot> shots = shots(Swirls.recipe(), 1);
        for (Bowl bowl : prep.bowls()) {
            assertThat(shots)
                    .as(bowl.name())
                    .anyMatch(shot -> shot.step() == bowl.step() && shot.bowls().contains(bowl.number()));
        }
        assertThat(new TreeSet<>(shots.stream().map(Shot::step).toList())).contains(1, 2, 3, 4, 5, 6, 7);
    }

    @Test
    void food_is_filmed_as_often_as_there_are_sets_of_bowls() {
        assertThat(shots(sponge(), 3))
                .filteredOn(shot -> shot.step() > 0 && !shot.bowls().isEmpty())
                .hasSize(4)
                .extracting(Shot::takes)
                .containsOnly(3);
    }

    @Test
    void one_picture_for_two_steps_is_filmed_once_but_two_actions_in_one_set_up_are_not_merged() {
        List<Shot> shots = shots(
                new TestKitchen("Rolls")
                        .component("")
                        .step("Cover and chill.", "chill", 1, 30)
                        .step("Chill again.", "chill", 1, 30)
                        .step("Roll out.", "roll-out", 1, 0)
                        .step("Shape.", "shape", 1, 0),
                1);
        assertThat(shots)
                .extracting(Shot::technique)
                .containsSubsequence("ingredients-line-up", "chill", "roll-out", "shape", "reveal");
        assertThat(ofSteps(shots)).hasSize(3);
        assertThat(ofSteps(shots).get(0).laterSteps()).containsExactly(2);
        assertThat(ofSteps(shots).get(1).setup())
                .isEqualTo(ofSteps(shots).get(2).setup());
    }

    @Test
    void a_step_without_a_technique_is_filmed_plainly_with_its_bowls() {
        List<Shot> shots = shots(
                new TestKitchen("Toast")
                        .component("")
                        .line("20", GRAM, "raspberry jam", "")
                        .step("Put the jam on the bread.", "", 1, 0, "0/0"),
                1);
        assertThat(ofSteps(shots)).singleElement().satisfies(shot -> {
            assertThat(shot.technique()).isEqualTo("default");
            assertThat(shot.bowls()).containsExactly(1);
            assertThat(shot.see()).isEqualTo("Put the jam on the bread");
        });
    }

    @Test
    void what_goes_in_is_named_even_where_the_template_does_not_ask() {
        assertThat(shots(Swirls.recipe(), 1))
                .filteredOn(shot -> shot.technique().equals("roll-out"))
                .singleElement()
                .satisfies(shot -> assertThat(shot.see())
                        .endsWith("; with unsalted butter and the rest of the light brown sugar"));
    }

    @Test
    void what_is_to_hand_for_greasing_is_shown_when_the_tin_is_greased() {
        assertThat(shots(Swirls.recipe(), 1))
                .filteredOn(shot -> shot.technique().equals("grease"))
                .singleElement()
                .satisfies(shot -> assertThat(shot.see()).endsWith("; with butter"));
    }
}
