package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.misecue.quantity.Unit.EACH;
import static org.misecue.quantity.Unit.GRAM;
import static org.misecue.quantity.Unit.MILLILITRE;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.misecue.notice.BadInput;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Rationals;

/** What stands by: spares for what fails, a fresh finish for the hero shot, and what is made earlier. */
class StandbyTest {

    private static final TestKitchen MERINGUE = new TestKitchen("Caramel meringue")
            .component("meringue")
            .line("4", EACH, "large eggs", "separated")
            .line("200", GRAM, "caster sugar", "")
            .component("caramel")
            .line("150", GRAM, "granulated sugar", "")
            .line("200", MILLILITRE, "double cream", "")
            .component("topping")
            .line("30", GRAM, "flaked almonds", "")
            .step("Whisk the eggs with the caster sugar.", "whisk", 10, 0, "0/0", "0/1")
            .step("Bake for 1 hour and cool for 1 hour.", "bake cool", 2, 120)
            .step("Caramelise the granulated sugar.", "caramelise", 10, 0, "1/0")
            .step("Whip the cream and spread it over the meringue.", "whip spread", 8, 0, "1/1")
            .step("Scatter with the almonds.", "scatter", 2, 0, "2/0");

    private static PrepPlan plan(PrepSettings settings) {
        return PrepPlanner.plan(MERINGUE.asWritten(), Pantry.standard(), settings);
    }

    private static List<String> spares(PrepSettings settings) {
        return plan(settings).spares().stream().map(PrepWords::spare).toList();
    }

    @Test
    void what_fails_easily_and_what_lies_on_top_is_weighed_once_more() {
        assertThat(spares(PrepSettings.standard()))
                .containsExactly(
                        "1 (50 g) large eggs, separated, if it fails: bowl 1, step 1",
                        "150 g granulated sugar, if it fails: bowl 3, step 3",
                        "200 ml (201 g) double cream, if it fails: bowl 4, step 4",
                        "30 g flaked almonds, for the hero shot: bowl 5, step 5");
    }

    @Test
    void every_spare_has_its_reason_and_source() {
        assertThat(plan(PrepSettings.standard()).spares()).allSatisfy(spare -> {
            assertThat(spare.why()).endsWith(".");
            assertThat(spare.source()).isNotBlank();
        });
    }

    @Test
    void spares_can_be_left_out() {
        assertThat(spares(PrepSettings.standard().withSpares(false, true))).hasSize(1);
        assertThat(spares(PrepSettings.standard().withSpares(true, false))).hasSize(3);
        assertThat(spares(PrepSettings.standard().withSpares(false, false))).isEmpty();
    }

    @Test
    void spares_are_bought_once_and_not_for_every_take() {
        PrepSettings three = PrepSettings.standard().withTakes(3);
        assertThat(bought(three, "large eggs")).isEqualTo("large eggs, 13 → 1 × box of 10 + 1 × box of 6 (3 over)");
        assertThat(bought(three.withSpares(false, false), "large eggs")).isEqualTo("large eggs, 12 → 1 × box of 12");
    }

    private static String bought(PrepSettings settings, String ingredient) {
        return plan(settings).shopping().stream()
                .filter(purchase -> purchase.ingredient().equals(ingredient))
                .map(PrepWords::purchase)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void what_is_made_earlier_has_the_bowls_of_the_steps_that_lead_there() {
        PrepPlan plan = plan(PrepSettings.standard()
                .withMadeEarlier(Set.of(2))
                .withFirstShot(LocalDateTime.parse("2026-05-04T10:00")));
        SwapOut meringue = plan.swapOuts().get(0);
        assertThat(meringue.state()).isEqualTo("meringue, baked and cooled");
        assertThat(meringue.steps()).containsExactly(1, 2);
        assertThat(meringue.bowls()).extracting(Bowl::number).containsExactly(1, 2);
        assertThat(meringue.bowls()).allMatch(bowl -> bowl.take() == 0);
        assertThat(meringue.shownIn()).isEqualTo(4);
        assertThat(meringue.work()).isGreaterThanOrEqualTo(Duration.ofHours(2));
        assertThat(meringue.begin().orElseThrow()).isBefore(LocalDateTime.parse("2026-05-04T11:00"));
        assertThat(bought(PrepSettings.standard().withMadeEarlier(Set.of(2)), "large eggs"))
                .isEqualTo("large eggs, 9 → 1 × box of 10 (1 over)");
    }

    @Test
    void long_waits_are_suggested_until_they_are_wanted() {
        assertThat(plan(PrepSettings.standard()).suggestions())
                .extracting(SwapOut::after)
                .containsExactly(2);
        assertThat(plan(PrepSettings.standard().withMadeEarlier(Set.of(2))).suggestions())
                .isEmpty();
    }

    @Test
    void what_waits_overnight_is_begun_the_day_before_though_nobody_asked_for_it() {
        PrepPlan plan = PrepPlanner.plan(
                new TestKitchen("Slow loaf")
                        .component("dough")
                        .line("500", GRAM, "bread flour", "")
                        .step("Knead the flour and prove it for 12 hours.", "knead prove", 15, 720, "0/0")
                        .step("Shape the dough and bake for 40 minutes.", "shape bake", 10, 40)
                        .asWritten(),
                Pantry.standard(),
                PrepSettings.standard().withFirstShot(LocalDateTime.parse("2026-05-04T10:00")));
        Job job = plan.jobs().get(0);
        assertThat(job.what()).isEqualTo("Begin the one that is made earlier: dough, proved");
        assertThat(job.before()).isGreaterThanOrEqualTo(Duration.ofHours(12));
        assertThat(job.at().orElseThrow()).isBefore(LocalDateTime.parse("2026-05-04T10:00"));
    }

    @Test
    void the_tally_counts_what_goes_beyond_one_dish() {
        Tally tally = plan(PrepSettings.standard().withTakes(2).withMadeEarlier(Set.of(2)))
                .tally();
        assertThat(tally.all())
                .isEqualTo(tally.batch()
                        .multiply(Rationals.of(2))
                        .add(tally.spares())
                        .add(tally.earlier()));
        assertThat(tally.beyond()).isEqualTo(tally.all().subtract(tally.batch()));
        assertThat(tally.words()).startsWith("A batch weighs ").contains("2 sets", "made earlier");
    }

    @Test
    void a_step_that_does_not_exist_cannot_be_made_earlier() {
        assertThatThrownBy(() -> plan(PrepSettings.standard().withMadeEarlier(Set.of(7))))
                .isInstanceOf(BadInput.class)
                .hasMessage("episode.yaml: made-earlier: the method has no step 7; it has steps 1 to 5.");
    }

    @Test
    void the_scale_tells_how_near_a_bowl_can_be() {
        Bowl sugar = plan(PrepSettings.standard()).bowls().get(1);
        assertThat(sugar.reading().orElseThrow().words()).isEqualTo("empty + 200 g ± 0.5 g");
        Bowl fine = plan(PrepSettings.standard().withScaleStep(Rationals.of(1, 10)))
                .bowls()
                .get(1);
        assertThat(fine.reading().orElseThrow().words()).isEqualTo("empty + 200 g ± 0.05 g");
        assertThat(plan(PrepSettings.standard()).bowls().get(0).reading()).isEmpty();
    }
}
