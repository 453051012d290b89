package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.quantity.Unit.GRAM;
import static org.misecue.quantity.Unit.MILLILITRE;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.pantry.Pantry;

class CautionsTest {

    private static List<Caution> cautions(TestKitchen kitchen) {
        return PrepPlanner.plan(kitchen.asWritten(), Pantry.standard(), PrepSettings.standard())
                .cautions();
    }

    private static Caution about(String start, List<Caution> cautions) {
        return cautions.stream()
                .filter(caution -> caution.what().startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void raw_egg_and_raw_flour_are_told_with_their_bowls_and_source() {
        List<Caution> cautions = cautions(Swirls.recipe());
        assertThat(about("Raw egg", cautions).where()).isEqualTo("bowl 6");
        assertThat(about("Raw flour", cautions).where()).isEqualTo("bowl 1");
        // The US Centers for Disease Control and Prevention warn of tasting raw mixtures of either.
        assertThat(about("Raw egg", cautions).source()).contains("Centers for Disease Control");
    }

    /** US Department of Agriculture: 2 h between 40 and 140 °F, 1 h above 90 °F, which is 32.2 °C. */
    @Test
    void chilled_things_carry_the_two_hour_rule_over_all_takes() {
        Caution caution = about("Out of the fridge", cautions(Swirls.recipe()));
        assertThat(caution.what()).contains("2 hours in all, every take added up", "1 hour", "32 °C (90 °F)");
        assertThat(caution.where()).isEqualTo("bowls 4 to 6 and 14");
        assertThat(caution.source()).contains("US Department of Agriculture");
    }

    @Test
    void boiling_sugar_is_told_only_where_sugar_and_boiling_meet() {
        TestKitchen syrup = new TestKitchen("Syrup")
                .component("")
                .line("200", GRAM, "caster sugar", "")
                .line("100", MILLILITRE, "water", "")
                .step("Boil the sugar and the water.", "boil", 5, 0, "0/0", "0/1");
        TestKitchen apart = new TestKitchen("Sponge")
                .component("")
                .line("200", GRAM, "caster sugar", "")
                .line("100", MILLILITRE, "water", "")
                .step("Boil the water.", "boil", 5, 0, "0/1")
                .step("Whisk in the sugar.", "whisk", 5, 0, "0/0");
        assertThat(about("Boiling sugar", cautions(syrup)).where()).isEqualTo("bowl 1; step 1");
        assertThat(cautions(apart)).noneMatch(caution -> caution.what().startsWith("Boiling sugar"));
    }

    @Test
    void mains_and_cables_are_told_every_day() {
        List<Caution> cautions = cautions(new TestKitchen("Nothing"));
        assertThat(cautions).extracting(Caution::where).containsOnly("all day").hasSize(2);
        // UK Health and Safety Executive: a residual current device of 30 mA or less, tested.
        assertThat(about("Mains and water", cautions).what()).contains("tested RCD of 30 mA or less");
    }

    private static PrepPlan planned(TestKitchen kitchen) {
        return PrepPlanner.plan(kitchen.asWritten(), Pantry.standard(), PrepSettings.standard());
    }

    /** What the issue of the day is must stand on the bowl itself, and so on its label, and not only in a list. */
    @ParameterizedTest
    @CsvSource({
        "large eggs, '', Raw egg: nobody tastes",
        "plain flour, '', Raw flour: nobody tastes",
        "double cream, '', Chilled: out 2 h at most",
        "double cream, '', 'Cream: out last'",
        "hazelnuts, roughly chopped, Knife:",
        "clear honey, '', Honey: not for children under 12 months",
    })
    void what_to_mind_stands_on_the_bowl(String ingredient, String preparation, String brief) {
        PrepPlan plan = planned(new TestKitchen("Bowl").component("").line("100", GRAM, ingredient, preparation));
        Bowl bowl = plan.bowls().get(0);
        assertThat(plan.cautions(bowl)).anyMatch(words -> words.startsWith(brief));
        assertThat(PrepText.of(plan).substring(0, PrepText.of(plan).indexOf("\nKit")))
                .contains(brief);
        assertThat(PrepPage.html(plan)).contains(brief);
        assertThat(PrintedLabel.of(plan, "", bowl, LabelSheet.USUAL).lines())
                .anyMatch(line -> line.text().contains(brief));
    }

    @Test
    void hot_sugar_stands_on_the_bowl_of_sugar_that_is_boiled() {
        PrepPlan plan = planned(new TestKitchen("Syrup")
                .component("")
                .line("200", GRAM, "caster sugar", "")
                .step("Boil the sugar.", "boil", 5, 0, "0/0"));
        assertThat(plan.cautions(plan.bowls().get(0))).containsExactly("Hot sugar: nobody walks behind the cook");
    }

    @Test
    void what_to_mind_stands_at_the_job() {
        PrepPlan plan = planned(Swirls.recipe());
        assertThat(plan.jobs())
                .filteredOn(job -> job.what().startsWith("Take the eggs"))
                .allSatisfy(job -> assertThat(plan.cautions(job)).anyMatch(words -> words.startsWith("Raw egg")));
        assertThat(plan.jobs())
                .filteredOn(job -> job.what().startsWith("Heat the oven"))
                .isNotEmpty()
                .allSatisfy(job -> assertThat(plan.cautions(job)).anyMatch(words -> words.startsWith("Hot tins")));
    }

    @Test
    void nothing_promises_to_be_safe() {
        String text = PrepText.of(planned(Swirls.recipe()));
        assertThat(text.toLowerCase(java.util.Locale.ROOT))
                .doesNotContain("is safe", "are safe", "safe to", "safely", "allergen-free", "free from");
    }

    @Test
    void every_caution_has_its_source() {
        assertThat(cautions(Swirls.recipe()))
                .allSatisfy(caution -> assertThat(caution.source()).isNotBlank());
        assertThat(PrepPlan.LAW).contains("local food law");
    }
}
