package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.quantity.Unit.GRAM;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Pantry;

/** A name in a later step means the ingredient again, or what an earlier step made of it. */
class LaterNamesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "plums     | Roast the plums for 20 minutes.              | Arrange the plums on top.                 | 1",
                "hazelnuts | Toast the hazelnuts and chop them.           | Scatter with the hazelnuts.               | 1",
                "chocolate | Melt the chocolate.                          | Fold the melted chocolate into the cream. | 1",
                "cream     | Whip the cream to soft peaks.                | Fold the whipped cream into the custard.  | 1",
                "raisins   | Soak the raisins in the tea.                 | Knead in the raisins.                     | 1",
                "butter    | Rub the butter into the flour.               | Brush with the butter.                    | 1 2",
                "flour     | Stir the flour into the eggs.                | Dust the worktop with the flour.          | 1 2",
                "sugar     | Sprinkle the plums with the sugar.           | Whisk the whites with the sugar.          | 1 2"
            })
    void the_bowl_serves_the_steps_that_take_from_it(String ingredient, String first, String later, String steps) {
        TestKitchen kitchen = new TestKitchen("Test")
                .component("")
                .line("100", GRAM, ingredient, "")
                .step(first, "", 1, 0, "0/0")
                .step(later, "", 1, 0, "0/0");
        PrepPlan plan = PrepPlanner.plan(kitchen.asWritten(), Pantry.standard(), PrepSettings.standard());
        assertThat(plan.bowls()).hasSize(1);
        Bowl bowl = plan.bowls().get(0);
        String found =
                bowl.step() + bowl.laterSteps().stream().map(step -> " " + step).reduce("", String::concat);
        assertThat(found).isEqualTo(steps);
    }
}
