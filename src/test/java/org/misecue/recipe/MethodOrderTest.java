package org.misecue.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The truth is in the sentences: what a cook has to have done before each of them. */
class MethodOrderTest {

    @TempDir
    private Path folder;

    private static final String TART = """
            # Pear tart

            ## Ingredients

            ### For the pastry

            - 200 g plain flour
            - 100 g butter
            - 2 tbsp cold water

            ### For the almond cream

            - 80 g butter, softened
            - 80 g caster sugar
            - 2 eggs
            - 90 g ground almonds

            ### To finish

            - 3 pears, peeled
            - 2 tbsp apricot jam

            ## Method

            """;

    private MethodOrder order(String... steps) {
        StringBuilder recipe = new StringBuilder(TART);
        for (int at = 0; at < steps.length; at++) {
            recipe.append(at + 1).append(". ").append(steps[at]).append('\n');
        }
        Path file = folder.resolve("tart.md");
        try {
            Files.writeString(file, recipe);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return MethodOrder.of(RecipeReader.read(file, "tart.md"));
    }

    /** "2<-1": the second step needs the first; "2b" is what hands do in step 2 after its first wait. */
    private static List<String> told(MethodOrder order) {
        return java.util.stream.IntStream.range(0, order.stretches().size())
                .mapToObj(at -> name(order.stretches().get(at)) + "<-"
                        + order.needs(at).stream()
                                .map(before -> name(order.stretches().get(before)))
                                .collect(Collectors.joining(",")))
                .toList();
    }

    private static String name(Stretch stretch) {
        return stretch.step() + (stretch.turn() == 1 ? "" : "" + (char) ('a' + stretch.turn() - 1));
    }

    private static final String DOUGH =
            "Rub the butter into the flour, add the water and bring together. Chill for 30 minutes.";
    private static final String CREAM = "Beat the butter and sugar, then the eggs, then the almonds.";

    @Test
    void what_begins_a_new_part_of_the_dish_waits_for_nothing() {
        assertThat(told(order(DOUGH, CREAM))).containsExactly("1<-", "2<-");
    }

    @Test
    void a_thing_named_by_its_part_is_the_work_of_its_last_step() {
        assertThat(told(order(
                        DOUGH,
                        "Roll out the pastry and line a 23 cm tin.",
                        CREAM,
                        "Spread the almond cream in the pastry case and bake for 35 minutes.")))
                .containsExactly("1<-", "2<-1", "3<-", "4<-2,3");
    }

    @Test
    void a_step_without_an_object_goes_on_with_what_is_at_hand() {
        assertThat(told(order(CREAM, "Scrape into a dish.", "Bake for 20 minutes.")))
                .containsExactly("1<-", "2<-1", "3<-2");
    }

    @Test
    void what_is_rolled_out_is_the_dough_though_another_part_was_made_in_between() {
        assertThat(told(order(DOUGH, CREAM, "Roll out to a circle of 28 cm, spread with the cream and bake.")))
                .containsExactly("1<-", "2<-", "3<-1,2");
    }

    @Test
    void what_is_set_in_a_tin_does_not_wait_there() {
        assertThat(order(DOUGH, "Set in a greased 20 cm tin.")
                        .stretches()
                        .get(1)
                        .waits())
                .isEmpty();
    }

    @Test
    void an_oven_is_heated_for_the_first_bake_and_a_tin_is_lined_for_what_fills_it() {
        assertThat(told(order(
                        "Heat the oven to 180 °C.",
                        "Grease and line a 20 cm tin.",
                        CREAM,
                        "Pour the mixture into the tin.",
                        "Bake for 30 minutes.")))
                .containsExactly("1<-", "2<-", "3<-", "4<-2,3", "5<-1,4");
    }

    @Test
    void what_follows_a_wait_may_need_more_than_what_goes_before_it() {
        assertThat(
                        told(
                                order(
                                        DOUGH,
                                        "Bake the pastry for 20 minutes. Cool completely.",
                                        "Beat the butter and sugar, then the eggs, then the almonds. Chill for 1 hour. Spread over the cooled pastry.")))
                .containsExactly("1<-", "2<-1", "3<-", "3b<-2,3");
    }

    @Test
    void meanwhile_means_beside_the_wait() {
        assertThat(told(order(DOUGH, "Meanwhile, warm the jam.", "Roll out the dough and brush with the jam.")))
                .containsExactly("1<-", "2<-", "3<-1,2");
    }

    @Test
    void a_thing_that_nothing_tells_waits_for_all_that_could_be_meant() {
        assertThat(told(order(DOUGH, CREAM, "Unwrap the parcels."))).containsExactly("1<-", "2<-", "3<-1,2");
    }

    @Test
    void an_ingredient_named_again_is_the_work_of_whoever_has_it() {
        assertThat(told(order("Roast the pears for 20 minutes.", CREAM, "Set the pears on the almond cream.")))
                .containsExactly("1<-", "2<-", "3<-1,2");
    }

    @Test
    void a_hot_thing_is_taken_hot() {
        MethodOrder order =
                order("Bake the pears for 20 minutes.", "Warm the jam.", "Brush the jam over the hot pears.");

        assertThat(order.takesHot(2, 0)).isTrue();
        assertThat(order.takesHot(2, 1)).isFalse();
    }

    @Test
    void a_person_may_say_better() {
        MethodOrder order = order(DOUGH, CREAM, "Unwrap the parcels.").with(Map.of(3, Set.of(1)));

        assertThat(told(order)).containsExactly("1<-", "2<-", "3<-1");
        assertThat(order.allBefore(3)).containsExactly(1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Bake for 20–25 minutes.                                  | bake 20-25 OVEN
            Bake for 1 hour, then cool in the tin for 10 minutes.    | bake 60-60 OVEN, cool 10-10 ROOM
            Cover and chill overnight.                               | chill 480-480 FRIDGE ?
            Leave in the fridge for 12 hours.                        | chill 720-720 FRIDGE
            Freeze for 2 hours.                                      | chill 120-120 FREEZER
            Leave to cool completely.                                | cool 60-60 ROOM ?
            Cool slightly.                                           | cool 10-10 ROOM ?
            Chill until set.                                         | chill 120-120 FRIDGE ?
            Soak the pears for 2 hours.                              | soak 120-120 ROOM
            Set the bowl aside.                                      | ''
            Knead for 10 minutes.                                    | ''
            """)
    void waits_are_told_with_their_place(String sentence, String expected) {
        String waits = order(CREAM, sentence).stretches().stream()
                .filter(stretch -> stretch.step() == 2)
                .flatMap(stretch -> stretch.waits().stream())
                .map(wait -> wait.what() + " " + wait.least().toMinutes() + "-"
                        + wait.most().toMinutes() + " " + wait.where() + (wait.stated() ? "" : " ?"))
                .collect(Collectors.joining(", "));

        assertThat(waits).isEqualTo(expected);
    }

    @Test
    void a_bake_knows_how_hot_its_oven_is() {
        List<String> ovens = order(
                        "Heat the oven to 220 °C.",
                        "Bake for 10 minutes, then turn the oven down to 180 °C and bake for 20 minutes.",
                        "Bake the rest for 30 minutes.")
                .stretches()
                .stream()
                .flatMap(stretch -> stretch.waits().stream())
                .map(wait ->
                        wait.oven().orElseThrow().amount().least().orElseThrow().toString())
                .toList();

        assertThat(ovens).containsExactly("220", "180", "180");
    }

    @Test
    void stretches_share_out_the_hands_of_their_step() {
        MethodOrder order = order("Beat the butter for 5 minutes. Chill for 1 hour. Whisk in the eggs for 10 minutes.");

        assertThat(order.stretches())
                .extracting(Stretch::handsOn)
                .containsExactly(Duration.ofMinutes(6), Duration.ofMinutes(10));
    }
}
