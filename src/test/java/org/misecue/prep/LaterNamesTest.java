package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Unit;

class LaterNamesTest {

    private static PrepPlan plan(String first, String later, String ingredient) {
        return PrepPlanner.plan(
                new TestKitchen("Bake")
                        .component("")
                        .line("400", Unit.GRAM, ingredient, "")
                        .step(first, "", 2, 0, "0/0")
                        .step(later, "", 2, 0, "0/0")
                        .asWritten(),
                Pantry.standard(),
                PrepSettings.standard());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Roast the plums for 20 minutes.             | Set the plums on top.                    | plums",
                "Melt the chocolate over hot water.          | Fold the chocolate through the cream.    | dark chocolate",
                "Whip the cream to soft peaks.               | Spread the cream over the cake.          | double cream",
                "Soak the raisins overnight.                 | Knead in the raisins.                    | raisins",
                "Toast the hazelnuts.                        | Scatter over the hazelnuts.              | hazelnuts",
                "Roast the plums in the dish.                | Spoon over the plum juice.               | ripe plums",
                "Mix the rhubarb with the ginger.            | Spoon in the roasted rhubarb.            | rhubarb",
            })
    void what_was_made_of_it_needs_no_more_of_it(String first, String later, String ingredient) {
        PrepPlan plan = plan(first, later, ingredient);
        assertThat(plan.bowls()).singleElement().satisfies(bowl -> assertThat(bowl.when())
                .isEqualTo("step 1"));
        assertThat(plan.notes()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Add the sugar to the yolks.                 | Whisk the whites with the sugar.         | caster sugar",
                "Sprinkle with the sugar.                    | Scatter over the sugar.                  | caster sugar",
                "Stir the milk into the flour.               | Brush with the milk.                     | whole milk",
                "Dust the tin with flour.                    | Fold in the flour.                       | plain flour",
                "Whisk the yolks with the sugar.             | Add the sugar to the berries.            | caster sugar",
            })
    void where_more_of_it_may_be_meant_one_bowl_serves_both_and_a_note_asks(
            String first, String later, String ingredient) {
        PrepPlan plan = plan(first, later, ingredient);
        assertThat(plan.bowls()).singleElement().satisfies(bowl -> assertThat(bowl.when())
                .isEqualTo("steps 1 and 2"));
        assertThat(plan.notes()).hasSize(1);
    }

    @Test
    void the_juice_of_another_fruit_is_not_this_juice() {
        PrepPlan plan = PrepPlanner.plan(
                new TestKitchen("Compote")
                        .component("")
                        .line("30", Unit.MILLILITRE, "lemon juice", "")
                        .line("400", Unit.GRAM, "plums", "")
                        .step("Sprinkle the plums with the lemon juice.", "", 2, 0, "0/1", "0/0")
                        .step("Boil the plum juice down.", "", 2, 0, "0/0")
                        .asWritten(),
                Pantry.standard(),
                PrepSettings.standard());
        assertThat(plan.bowls()).extracting(Bowl::when).containsOnly("step 1");
    }
}
