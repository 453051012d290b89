package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.quantity.Unit.GRAM;
import static org.misecue.quantity.Unit.MILLILITRE;

import java.util.List;
import org.junit.jupiter.api.Test;
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

    @Test
    void every_caution_has_its_source() {
        assertThat(cautions(Swirls.recipe()))
                .allSatisfy(caution -> assertThat(caution.source()).isNotBlank());
        assertThat(PrepPlan.LAW).contains("local food law");
    }
}
