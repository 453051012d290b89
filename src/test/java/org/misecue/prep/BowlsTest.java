package org.misecue.prep;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.quantity.Unit.EACH;
import static org.misecue.quantity.Unit.GRAM;
import static org.misecue.quantity.Unit.MILLILITRE;
import static org.misecue.quantity.Unit.TABLESPOON;
import static org.misecue.quantity.Unit.TEASPOON;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.Note;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.scale.ScaledRecipe;

class BowlsTest {

    private static final ScaledRecipe SWIRLS = Swirls.recipe().asWritten();

    private static PrepPlan plan(TestKitchen recipe) {
        return PrepPlanner.plan(recipe.asWritten(), Pantry.standard(), PrepSettings.standard());
    }

    private static List<String> names(PrepPlan plan) {
        return plan.bowls().stream().map(Bowl::name).toList();
    }

    private static List<String> amounts(PrepPlan plan) {
        return plan.bowls().stream()
                .flatMap(bowl -> bowl.contents().stream())
                .map(content -> QuantityWriter.text(content.weighed()))
                .toList();
    }

    @Test
    void dry_things_of_one_clause_share_a_bowl_and_yeast_stands_apart_from_salt() {
        Bowl dryMix = plan(Swirls.recipe()).bowls().get(0);
        assertThat(dryMix.name()).isEqualTo("the dry mix");
        assertThat(dryMix.contents())
                .extracting(Content::ingredient)
                .containsExactly("strong white bread flour", "fine salt", "ground cardamom");
        assertThat(names(plan(Swirls.recipe()))).contains("fast-action dried yeast");
    }

    @Test
    void what_is_put_by_stands_in_its_own_bowl_until_it_is_used() {
        TestKitchen scones = new TestKitchen("Scones")
                .component("")
                .line("300", MILLILITRE, "buttermilk", "")
                .step("Reserve 50 ml of the buttermilk and stir in the rest.", "stir", 2, 0)
                .part(0, 0, Quantity.of(50, MILLILITRE), "set aside")
                .part(0, 0, Quantity.of(250, MILLILITRE), "the rest")
                .step("Brush with the reserved buttermilk.", "brush", 2, 0)
                .part(0, 0, Quantity.of(50, MILLILITRE), "reserved");
        PrepPlan plan = plan(scones);
        assertThat(names(plan)).containsExactly("the reserved buttermilk", "the rest of the buttermilk");
        assertThat(amounts(plan)).containsExactly("50 ml", "250 ml");
        assertThat(plan.bowls().get(0).laterSteps()).containsExactly(2);
        assertThat(plan.notes()).isEmpty();
    }

    @Test
    void dry_things_of_two_clauses_stand_apart() {
        PrepPlan plan = plan(new TestKitchen("Shortbread")
                .component("")
                .line("200", GRAM, "plain flour", "")
                .line("1", TEASPOON, "ground ginger", "")
                .step("Sift the flour into the bowl. Dust the ginger over.", "sift dust", 2, 0, "0/0", "0/1"));
        assertThat(names(plan)).containsExactly("plain flour", "ground ginger");
    }

    @Test
    void a_dry_thing_that_the_step_does_not_name_goes_with_the_dry_mix() {
        PrepPlan plan = plan(new TestKitchen("Spice biscuits")
                .component("")
                .line("200", GRAM, "plain flour", "")
                .line("1", TEASPOON, "ground cinnamon", "")
                .step("Mix the flour and spices.", "", 2, 0, "0/0", "0/1"));
        assertThat(plan.bowls()).hasSize(1);
    }

    @Test
    void the_same_dry_step_of_two_components_has_two_bowls() {
        PrepPlan plan = plan(new TestKitchen("Two doughs")
                .component("light")
                .line("200", GRAM, "plain flour", "")
                .component("dark")
                .line("180", GRAM, "plain flour", "")
                .line("20", GRAM, "cocoa powder", "")
                .step("Put the flour and cocoa into two bowls.", "", 2, 0, "0/0", "1/0", "1/1"));
        assertThat(names(plan)).containsExactly("plain flour", "the dry mix");
        assertThat(plan.bowls()).extracting(Bowl::component).containsExactly("light", "dark");
    }

    @Test
    void a_stated_share_and_the_rest_have_a_bowl_each() {
        PrepPlan plan = plan(Swirls.recipe());
        assertThat(names(plan)).contains("three quarters of the whole milk", "the rest of the whole milk");
        assertThat(amounts(plan)).contains("188 ml", "62 ml");
        assertThat(plan.notes()).isEmpty();
    }

    @Test
    void a_part_in_spoons_is_taken_off_an_amount_in_millilitres() {
        PrepPlan plan = plan(new TestKitchen("Scones")
                .component("")
                .line("100", MILLILITRE, "milk", "")
                .step("Add the milk.", "", 2, 0)
                .part(0, 0, Quantity.of(2, TABLESPOON))
                .step("Glaze with the rest.", "", 2, 0, "0/0/the rest"));
        assertThat(amounts(plan)).containsExactly("30 ml", "70 ml");
    }

    @Test
    void a_part_in_spoons_is_taken_off_a_weight_through_the_pantry() {
        // USDA SR26 19335: granulated sugar, 200 g in a US cup, so 12.5 g in a US tablespoon and 12.7 g in a metric
        // one.
        PrepPlan plan = plan(new TestKitchen("Biscuits")
                .component("")
                .line("100", GRAM, "granulated sugar", "")
                .step("Whisk with the sugar.", "whisk", 2, 0)
                .part(0, 0, Quantity.of(2, TABLESPOON))
                .step("Scatter the rest.", "scatter", 2, 0, "0/0/the rest"));
        assertThat(amounts(plan)).containsExactly("25 g", "75 g");
    }

    @Test
    void thirds_are_rounded_to_the_gram_and_still_add_up() {
        PrepPlan plan = plan(new TestKitchen("Meringue")
                .component("")
                .line("100", GRAM, "caster sugar", "")
                .step("Add a third of the sugar.", "whisk", 2, 0, "0/0/a third")
                .step("Add another third.", "whisk", 2, 0, "0/0/another third")
                .step("Add the last third.", "whisk", 2, 0, "0/0/the last third"));
        assertThat(amounts(plan)).containsExactly("33 g", "33 g", "34 g");
        assertThat(plan.notes()).isEmpty();
    }

    @Test
    void steps_that_do_not_say_how_much_share_one_bowl_and_a_note_says_so() {
        PrepPlan plan = plan(new TestKitchen("Sponge")
                .component("")
                .line("150", GRAM, "caster sugar", "")
                .step("Whisk the yolks with the sugar.", "whisk", 2, 0, "0/0")
                .step("Whisk the whites with the sugar.", "whisk", 2, 0, "0/0"));
        assertThat(plan.bowls()).hasSize(1);
        assertThat(plan.bowls().get(0).when()).isEqualTo("steps 1 and 2");
        assertThat(plan.notes())
                .extracting(Note::toString)
                .containsExactly("recipe.md:3: steps 1 and 2 name the caster sugar and no share: one bowl serves them;"
                        + " divide it before filming if each takes a part");
    }

    @Test
    void what_no_step_names_has_the_last_bowl_and_a_note() {
        PrepPlan plan = plan(new TestKitchen("Loaf")
                .component("")
                .line("1", TEASPOON, "vanilla extract", "")
                .line("2", EACH, "eggs", "")
                .step("Beat the eggs.", "beat", 2, 0, "0/1"));
        assertThat(names(plan)).containsExactly("eggs", "vanilla extract");
        assertThat(plan.bowls().get(1).when()).isEqualTo("no step names it");
        assertThat(plan.notes()).hasSize(1);
    }

    @Test
    void half_that_nobody_uses_up_is_left_in_a_bowl_of_its_own() {
        PrepPlan plan = plan(new TestKitchen("Tart")
                .component("")
                .line("80", GRAM, "raspberry jam", "")
                .step("Spread half of the jam.", "", 2, 0, "0/0/half"));
        assertThat(names(plan)).containsExactly("half of the raspberry jam", "what is left of the raspberry jam");
        assertThat(plan.notes())
                .extracting(Note::sentence)
                .containsExactly("the method leaves part of the raspberry jam over");
    }

    @Test
    void more_than_the_list_has_is_told_and_not_invented() {
        PrepPlan plan = plan(new TestKitchen("Tart")
                .component("")
                .line("80", GRAM, "raspberry jam", "")
                .step("Spread two thirds of the jam.", "", 2, 0, "0/0/two thirds")
                .step("Spread half of the jam.", "", 2, 0, "0/0/half"));
        assertThat(amounts(plan)).containsExactly("53 g", "27 g");
        assertThat(plan.notes()).hasSize(1);
    }

    @Test
    void a_range_is_shared_at_both_ends() {
        PrepPlan plan = plan(new TestKitchen("Icing")
                .component("")
                .line(
                        Optional.of(new Quantity(Amount.between(Rationals.of(2), Rationals.of(4)), TABLESPOON)),
                        "milk",
                        "")
                .step("Stir in half of the milk.", "", 2, 0, "0/0/half")
                .step("Let down with the rest.", "", 2, 0, "0/0/the rest"));
        assertThat(amounts(plan)).containsExactly("1–2 tbsp", "1–2 tbsp");
    }

    @Test
    void what_has_no_amount_is_to_hand_and_in_no_bowl() {
        PrepPlan plan = plan(Swirls.recipe());
        assertThat(plan.toHand())
                .extracting(thing -> thing.line().text())
                .containsExactly("flaked almonds, to scatter", "butter, for greasing");
        assertThat(plan.toHand().get(1).steps()).containsExactly(5);
    }

    @Test
    void every_take_has_the_same_bowls() {
        PrepPlan plan = PrepPlanner.plan(
                SWIRLS, Pantry.standard(), PrepSettings.standard().withTakes(3));
        assertThat(plan.bowls()).hasSize(45);
        assertThat(plan.bowlsOf(3))
                .extracting(Bowl::number)
                .isEqualTo(plan.bowlsOf(1).stream().map(Bowl::number).toList());
        assertThat(plan.bowlsOf(3)).extracting(Bowl::take).containsOnly(3);
    }

    @Test
    void liquids_stand_in_jugs_and_eggs_apart() {
        PrepPlan plan = plan(Swirls.recipe());
        assertThat(plan.bowls())
                .filteredOn(bowl -> bowl.name().contains("milk"))
                .extracting(Bowl::vessel)
                .containsOnly(Vessel.SMALL_JUG);
        assertThat(plan.bowls())
                .filteredOn(bowl -> bowl.name().equals("large egg"))
                .singleElement()
                .satisfies(bowl -> assertThat(bowl.contents()).hasSize(1));
        assertThat(plan.bowls().get(0).vessel()).isEqualTo(Vessel.LARGE_BOWL);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "120 | double cream | Whip the cream to soft peaks.             | LARGE_BOWL",
                "60  | double cream | Whisk the cream until thick.              | SMALL_BOWL",
                "120 | double cream | Whisk the icing sugar with the cream.     | SMALL_JUG",
                "120 | double cream | Beat in the cream.                        | SMALL_JUG",
                "120 | double cream | Pour the cream over.                      | SMALL_JUG",
                "100 | egg whites   | Whisk the egg whites to stiff peaks.      | LARGE_BOWL",
                "100 | egg whites   | Stir in the egg whites.                   | SMALL_BOWL",
                "120 | caster sugar | Whisk the caster sugar with the eggs.     | SMALL_BOWL",
            })
    void what_is_whisked_in_its_bowl_has_room_to_grow(int grams, String ingredient, String text, Vessel vessel) {
        PrepPlan plan = plan(new TestKitchen("Cream")
                .component("")
                .line(String.valueOf(grams), GRAM, ingredient, "")
                .step(text, "whisk", 2, 0, "0/0"));
        assertThat(plan.bowls()).extracting(Bowl::vessel).containsExactly(vessel);
    }

    @Test
    void a_bowl_tells_its_allergens_and_sends_to_the_label_for_what_the_pantry_does_not_know() {
        PrepPlan plan = plan(new TestKitchen("Strange cake")
                .component("")
                .line("100", GRAM, "plain flour", "")
                .line("10", GRAM, "xyzzy crumbs", "")
                .step("Mix.", "", 2, 0, "0/0", "0/1"));
        assertThat(plan.bowls())
                .extracting(bowl -> PrepWords.allergens(bowl.allergens()))
                .containsExactly("Contains GLUTEN", "Check the label: for xyzzy crumbs");
    }

    @Test
    void pieces_of_unknown_weight_have_room() {
        PrepPlan plan = plan(new TestKitchen("Topping")
                .component("")
                .line("16", EACH, "xyzzy crumbs", "")
                .step("Top with them.", "scatter", 2, 0, "0/0"));
        assertThat(plan.bowls().get(0).vessel()).isEqualTo(Vessel.SMALL_BOWL);
    }
}
