package org.misecue.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.misecue.day.Days.TEN;
import static org.misecue.day.Days.TWO_HEATS;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.misecue.notice.BadInput;

/** Days of invented dishes: what a person who knows kitchens expects of them. */
class DayPlannerTest {

    private static DaySettings usual() {
        return DaySettings.usual(TEN);
    }

    private static DaySettings kitchen(int presenters, int cameras, int ovens, boolean mixer) {
        DaySettings usual = usual();
        return new DaySettings(
                presenters,
                cameras,
                ovens,
                usual.shelves(),
                usual.rings(),
                mixer,
                TEN,
                true,
                Optional.empty(),
                usual.lineUp(),
                usual.change(),
                List.of(),
                Optional.empty(),
                List.of(),
                Set.of(),
                Map.of());
    }

    private static DaySettings wishes(
            Optional<LocalTime> end,
            List<DaySettings.Break> breaks,
            Optional<DaySettings.Daylight> daylight,
            List<DaySettings.Appointment> appointments) {
        DaySettings usual = usual();
        return new DaySettings(
                1,
                1,
                1,
                2,
                4,
                true,
                TEN,
                true,
                end,
                usual.lineUp(),
                usual.change(),
                breaks,
                daylight,
                appointments,
                Set.of(),
                Map.of());
    }

    private static boolean overlap(Entry one, Entry other) {
        return one.start().isBefore(other.end()) && other.start().isBefore(one.end());
    }

    @Test
    void one_oven_bakes_two_heats_one_after_the_other_with_time_to_change() {
        DayPlan plan = Days.plan(TWO_HEATS, usual());
        Entry oats = Days.row(plan, "bakes at 160 °C");
        Entry loaf = Days.row(plan, "bakes at 180 °C");
        assertThat(overlap(oats, loaf)).isFalse();
        Entry first = oats.start().isBefore(loaf.start()) ? oats : loaf;
        Entry second = first == oats ? loaf : oats;
        assertThat(Duration.between(first.end(), second.start()).toMinutes()).isGreaterThanOrEqualTo(25);
        assertThat(plan.proved()).isTrue();
    }

    @Test
    void what_bakes_on_at_another_heat_stays_in_its_oven() {
        DayPlan plan = Days.plan(
                TWO_HEATS.replace(
                        "bake at 180 °C for 45 minutes",
                        "bake at 220 °C for 15 minutes, then turn the oven down to 180 °C and bake for 30 minutes"),
                usual());
        Entry hot = Days.row(plan, "bakes at 220 °C");
        Entry mild = Days.row(plan, "bakes at 180 °C");
        assertThat(Duration.between(hot.end(), mild.start()).toMinutes()).isBetween(0L, 4L);
        assertThat(Days.find(plan, "out of the oven").map(Entry::step)).isNotEmpty();
        Entry oats = Days.row(plan, "bakes at 160 °C");
        assertThat(oats.end().isBefore(hot.start()) || oats.start().isAfter(mild.end()))
                .isTrue();
    }

    @Test
    void two_ovens_end_the_day_no_later_and_are_told_apart() {
        DayPlan one = Days.plan(TWO_HEATS, kitchen(1, 1, 1, true));
        DayPlan two = Days.plan(TWO_HEATS, kitchen(1, 1, 2, true));
        assertThat(two.end()).isBeforeOrEqualTo(one.end());
        assertThat(two.entries().stream().flatMap(entry -> entry.with().stream()))
                .contains("oven 1")
                .doesNotContain("oven");
    }

    @Test
    void a_bake_comes_out_of_the_oven_on_time() {
        DayPlan plan = Days.plan(TWO_HEATS, usual());
        for (Entry bake : plan.entries().stream()
                .filter(entry -> entry.what().contains("bakes at"))
                .toList()) {
            Entry out = plan.entries().stream()
                    .filter(entry -> entry.kind() == Entry.Kind.TAKE_OUT && entry.step() == bake.step())
                    .findFirst()
                    .orElseThrow();
            assertThat(Duration.between(bake.end(), out.start()).toMinutes()).isBetween(0L, 3L);
        }
    }

    @Test
    void nobody_is_in_two_places() {
        for (int presenters = 1; presenters <= 2; presenters++) {
            DayPlan plan = Days.plan(TWO_HEATS, kitchen(presenters, presenters, 1, true));
            for (Entry one : plan.entries()) {
                for (Entry other : plan.entries()) {
                    if (one.id() < other.id() && overlap(one, other)) {
                        assertThat(Collections.disjoint(one.who(), other.who())).isTrue();
                    }
                }
            }
        }
    }

    @Test
    void two_presenters_and_two_cameras_end_the_day_sooner() {
        assertThat(Days.plan(TWO_HEATS, kitchen(2, 2, 1, true)).end())
                .isBefore(Days.plan(TWO_HEATS, kitchen(1, 1, 1, true)).end());
    }

    @Test
    void without_a_stand_mixer_beating_takes_longer_and_keeps_none_busy() {
        DayPlan with = Days.plan(TWO_HEATS, kitchen(1, 1, 1, true));
        DayPlan without = Days.plan(TWO_HEATS, kitchen(1, 1, 1, false));
        assertThat(minutes(Days.row(without, "loaf: beat"))).isGreaterThan(minutes(Days.row(with, "loaf: beat")));
        assertThat(Days.row(with, "loaf: beat").with()).contains("mixer");
        assertThat(without.entries().stream().flatMap(entry -> entry.with().stream()))
                .doesNotContain("mixer");
    }

    private static long minutes(Entry entry) {
        return Duration.between(entry.start(), entry.end()).toMinutes();
    }

    @Test
    void the_day_is_no_longer_than_in_the_order_of_the_recipe() {
        DayPlan plan = Days.plan(TWO_HEATS, usual());
        assertThat(plan.naiveEnd().orElseThrow()).isAfterOrEqualTo(plan.end());
        assertThat(plan.saved())
                .isEqualTo(Duration.between(plan.end(), plan.naiveEnd().orElseThrow()));
    }

    @Test
    void a_break_is_held_by_everybody_within_its_hours() {
        DaySettings.Break lunch = new DaySettings.Break(LocalTime.of(11, 0), LocalTime.of(12, 0), 30);
        DayPlan plan = Days.plan(TWO_HEATS, wishes(Optional.empty(), List.of(lunch), Optional.empty(), List.of()));
        Entry pause = Days.row(plan, "Break");
        assertThat(pause.start().toLocalTime()).isBetween(lunch.from(), lunch.to());
        assertThat(pause.who()).containsExactly("presenter", "camera");
        assertThat(plan.entries())
                .filteredOn(entry -> entry.id() != pause.id() && !entry.who().isEmpty())
                .noneMatch(entry -> overlap(entry, pause));
    }

    @Test
    void an_appointment_keeps_the_presenter_away_and_a_shot_to_its_hour() {
        DayPlan plan = Days.plan(
                TWO_HEATS,
                wishes(
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        List.of(
                                new DaySettings.Appointment.Away(LocalTime.of(11, 0), 20, "presenter", "delivery"),
                                new DaySettings.Appointment.OfShot(LocalTime.of(16, 30), last(TWO_HEATS)))));
        Entry away = Days.row(plan, "presenter away at 11:00");
        assertThat(plan.entries())
                .filteredOn(entry -> entry.id() != away.id() && entry.who().contains("presenter"))
                .noneMatch(entry -> overlap(entry, away));
        assertThat(plan.entries())
                .filteredOn(entry -> entry.shots().contains(last(TWO_HEATS)))
                .extracting(Entry::start)
                .first()
                .satisfies(start -> assertThat(start).isEqualTo(LocalDateTime.of(2026, 5, 4, 16, 30)));
    }

    private static int last(String recipe) {
        return Days.plan(recipe, usual()).entries().stream()
                .filter(entry -> entry.what().startsWith("Closing"))
                .map(entry -> entry.shots().get(0))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void daylight_is_given_to_the_set_ups_that_ask_for_it() {
        DaySettings.Daylight light =
                new DaySettings.Daylight(LocalTime.of(10, 0), LocalTime.of(15, 0), List.of("hero table"));
        DayPlan plan = Days.plan(TWO_HEATS, wishes(Optional.empty(), List.of(), Optional.of(light), List.of()));
        assertThat(plan.entries())
                .filteredOn(entry -> entry.setUp().equals("hero table"))
                .isNotEmpty()
                .allMatch(entry -> !entry.end().toLocalTime().isAfter(light.to()));
    }

    @Test
    void wishes_that_conflict_are_named_and_no_others() {
        DaySettings.Daylight late =
                new DaySettings.Daylight(LocalTime.of(16, 0), LocalTime.of(18, 0), List.of("hero table"));
        DaySettings.Break tea = new DaySettings.Break(LocalTime.of(11, 0), LocalTime.of(13, 0), 15);
        assertThatThrownBy(() -> Days.plan(
                        TWO_HEATS,
                        wishes(Optional.of(LocalTime.of(15, 0)), List.of(tea), Optional.of(late), List.of())))
                .isInstanceOf(BadInput.class)
                .hasMessage("episode.yaml: these wishes cannot all be met: the day ends by 15:00;"
                        + " daylight from 16:00 to 18:00 for hero table; change or give up one of them.");
    }

    @Test
    void a_wish_that_nothing_can_meet_is_named_alone() {
        assertThatThrownBy(() -> Days.plan(
                        TWO_HEATS, wishes(Optional.of(LocalTime.of(11, 0)), List.of(), Optional.empty(), List.of())))
                .isInstanceOf(BadInput.class)
                .hasMessage("episode.yaml: this wish cannot be met: the day ends by 11:00; change it or give it up.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "shot    | 99 | episode.yaml: day: appointments: there is no shot 99;",
                "set-up  | 0  | episode.yaml: day: daylight: no shot is filmed in “balcony”; the set-ups are ",
                "made    | 9  | episode.yaml: made-earlier: the method has no step 9; it has steps 1 to 6.",
                "after   | 8  | episode.yaml: day: after: the method has no step 8; it has steps 1 to 6."
            })
    void what_the_recipe_does_not_have_is_refused(String what, int number, String message) {
        DaySettings usual = usual();
        DaySettings settings =
                switch (what) {
                    case "shot" ->
                        wishes(
                                Optional.empty(),
                                List.of(),
                                Optional.empty(),
                                List.of(new DaySettings.Appointment.OfShot(LocalTime.NOON, number)));
                    case "set-up" ->
                        wishes(
                                Optional.empty(),
                                List.of(),
                                Optional.of(new DaySettings.Daylight(
                                        LocalTime.NOON, LocalTime.of(13, 0), List.of("balcony"))),
                                List.of());
                    case "made" -> usual.withMadeEarlier(Set.of(number));
                    default ->
                        new DaySettings(
                                1,
                                1,
                                1,
                                2,
                                4,
                                true,
                                TEN,
                                true,
                                Optional.empty(),
                                2,
                                5,
                                List.of(),
                                Optional.empty(),
                                List.of(),
                                Set.of(),
                                Map.of(number, Set.of(1)));
                };
        assertThatThrownBy(() -> Days.plan(TWO_HEATS, settings))
                .isInstanceOf(BadInput.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void what_food_asks_gives_way_with_a_note_where_the_shots_do_not_leave_it_the_time() {
        String caramel = """
                # Caramel bars

                ## Ingredients

                - 200 g granulated sugar
                - 100 g butter, softened

                ## Method

                1. Caramelise the sugar until dark amber.
                2. Beat the butter for 12 minutes.
                3. Pour the caramel over the butter and stir.
                """;
        DayPlan plan = Days.plan(caramel, usual());
        assertThat(plan.notes().get(0).toString())
                .isEqualTo("recipe.md: this was given up: step 2 follows step 1 within 2 min: caramel sets in the pan;"
                        + " it cannot be kept with these shots and set-ups. Film both in one set-up, or say under"
                        + " “day: after” what comes after what.");
    }

    @Test
    void what_was_made_earlier_is_not_waited_for() {
        DayPlan plan = Days.plan(TWO_HEATS, usual());
        DayPlan stoodIn = Days.plan(TWO_HEATS, usual().withMadeEarlier(Set.of(4)));
        assertThat(stoodIn.end()).isBefore(plan.end());
        assertThat(plan.standIns())
                .filteredOn(standIn -> standIn.step() == 4)
                .extracting(DayPlan.StandIn::saves)
                .containsExactly(Duration.between(stoodIn.end(), plan.end()));
    }

    @Test
    void a_wait_longer_than_a_day_of_filming_is_taken_as_made_earlier_and_said() {
        DayPlan plan = Days.plan(TWO_HEATS.replace("cool for 1 hour", "cool for 8 hours"), usual());
        assertThat(plan.end()).isBefore(TEN.plusHours(8));
        assertThat(plan.notes().get(0).toString()).contains("step 4 waits 8 h", "made-earlier: [4]");
    }

    @Test
    void the_settings_may_say_what_comes_after_what() {
        DaySettings settings = new DaySettings(
                1,
                1,
                1,
                2,
                4,
                true,
                TEN,
                true,
                Optional.empty(),
                2,
                5,
                List.of(),
                Optional.empty(),
                List.of(),
                Set.of(),
                Map.of(2, Set.of(1)));
        DayPlan plan = Days.plan(TWO_HEATS, settings);
        assertThat(Days.row(plan, "loaf: beat").start())
                .isAfterOrEqualTo(Days.row(plan, "bakes at 160 °C").end());
    }

    @Test
    void the_same_day_is_planned_twice_the_same() {
        assertThat(Days.plan(TWO_HEATS, usual())).isEqualTo(Days.plan(TWO_HEATS, usual()));
    }

    @Test
    void a_day_without_a_date_says_so() {
        DaySettings usual = usual();
        DaySettings undated = new DaySettings(
                1,
                1,
                1,
                2,
                4,
                true,
                TEN,
                false,
                Optional.empty(),
                usual.lineUp(),
                usual.change(),
                List.of(),
                Optional.empty(),
                List.of(),
                Set.of(),
                Map.of());
        DayPlan plan = Days.plan(TWO_HEATS, undated);
        assertThat(plan.day()).isEmpty();
        assertThat(DayText.of(plan)).doesNotContain("2026");
        assertThat(plan.notes().get(0).toString()).startsWith("episode.yaml: no day is named");
    }
}
