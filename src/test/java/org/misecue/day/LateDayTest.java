package org.misecue.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.misecue.day.Days.TEN;
import static org.misecue.day.Days.TWO_HEATS;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.misecue.recipe.Recipe;

/** A day that has begun: what is done stays, what bakes goes on, the rest is planned anew. */
class LateDayTest {

    private static final Recipe LOAF = Days.recipe(TWO_HEATS);

    private static DaySettings settings(Optional<LocalTime> end, DaySettings.Break... breaks) {
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
                2,
                5,
                List.of(breaks),
                Optional.empty(),
                List.of(),
                Set.of(),
                Map.of());
    }

    private static DayPlan planned(DaySettings settings) {
        return Days.planner(LOAF, settings).plan();
    }

    private static DayPlan replanned(DaySettings settings, DayPlan first, LocalDateTime now, Set<Integer> done) {
        Map<Integer, LocalDateTime> starts = new HashMap<>();
        Map<Integer, Integer> ovens = new HashMap<>();
        first.entries().forEach(entry -> {
            starts.put(entry.id(), entry.start());
            entry.oven().ifPresent(oven -> ovens.put(entry.id(), oven));
        });
        return Days.planner(LOAF, settings)
                .replan(new Standing(now, done, starts, ovens, starts, Optional.of(first.end())));
    }

    /** Everything that ends by a time. */
    private static Set<Integer> endedBy(DayPlan plan, LocalDateTime time) {
        Set<Integer> ended = new TreeSet<>();
        plan.entries().stream().filter(entry -> !entry.end().isAfter(time)).forEach(entry -> ended.add(entry.id()));
        return ended;
    }

    private static Entry same(DayPlan plan, Entry entry) {
        return plan.entries().stream()
                .filter(other -> other.id() == entry.id())
                .findFirst()
                .orElseThrow(() -> new AssertionError("row " + entry.id() + " is gone"));
    }

    @Test
    void a_day_that_runs_as_planned_stays_as_it_is() {
        DayPlan first = planned(settings(Optional.empty()));
        Entry bake = Days.row(first, "bakes at 180 °C");
        DayPlan again = replanned(settings(Optional.empty()), first, bake.start(), endedBy(first, bake.start()));
        assertThat(again.end()).isEqualTo(first.end());
        assertThat(again.slips()).isEmpty();
        assertThat(again.promised()).contains(first.end());
    }

    @Test
    void rows_keep_their_numbers_people_and_ovens() {
        DayPlan first = planned(settings(Optional.empty()));
        LocalDateTime now = TEN.plusMinutes(75);
        DayPlan again = replanned(settings(Optional.empty()), first, now, endedBy(first, TEN.plusMinutes(45)));
        for (Entry entry : first.entries()) {
            assertThat(same(again, entry).what().replaceAll("\\d\\d:\\d\\d", ""))
                    .isEqualTo(entry.what().replaceAll("\\d\\d:\\d\\d", ""));
            assertThat(same(again, entry).who()).isEqualTo(entry.who());
            assertThat(same(again, entry).with()).isEqualTo(entry.with());
        }
    }

    @Test
    void what_is_done_stays_behind_and_the_rest_begins_from_now_on() {
        DayPlan first = planned(settings(Optional.empty()));
        LocalDateTime now = TEN.plusMinutes(80);
        Set<Integer> done = endedBy(first, TEN.plusMinutes(40));
        DayPlan again = replanned(settings(Optional.empty()), first, now, done);
        assertThat(again.entries())
                .filteredOn(Entry::done)
                .extracting(Entry::id)
                .containsAll(done);
        assertThat(again.entries())
                .filteredOn(entry -> entry.done() && entry.kind() != Entry.Kind.JOB)
                .allMatch(entry -> !entry.end().isAfter(now));
        assertThat(again.entries())
                .filteredOn(entry -> !entry.done() && !entry.who().isEmpty())
                .isNotEmpty()
                .allMatch(entry -> !entry.start().isBefore(now));
        assertThat(again.end()).isAfter(first.end());
        assertThat(again.slips()).isNotEmpty();
        assertThat(again.slips()).allMatch(slip -> slip.is().isAfter(slip.was()));
        assertThat(String.join("\n", DayWords.summary(again))).contains("later than first planned");
    }

    @Test
    void what_bakes_when_the_day_is_late_goes_on_where_it_is() {
        DayPlan first = planned(settings(Optional.empty()));
        Entry bake = Days.row(first, "bakes at 180 °C");
        LocalDateTime now = bake.start().plusMinutes(10);
        DayPlan again = replanned(settings(Optional.empty()), first, now, endedBy(first, bake.start()));
        assertThat(same(again, bake))
                .usingRecursiveComparison()
                .ignoringFields("critical")
                .isEqualTo(bake);
    }

    @Test
    void what_a_finished_row_needs_is_finished_too() {
        DayPlan first = planned(settings(Optional.empty()));
        Entry bake = Days.row(first, "bakes at 180 °C");
        Entry beat = Days.row(first, "loaf: beat");
        DayPlan again = replanned(settings(Optional.empty()), first, bake.end(), Set.of(bake.id()));
        assertThat(same(again, beat).done()).isTrue();
        assertThat(again.notes().toString())
                .contains("so they were taken as done too: ")
                .contains(String.valueOf(beat.id()));
    }

    @Test
    void a_bake_that_should_be_out_by_now_is_told() {
        DayPlan first = planned(settings(Optional.empty()));
        Entry bake = Days.row(first, "bakes at 180 °C");
        DayPlan again =
                replanned(settings(Optional.empty()), first, bake.end().plusMinutes(15), endedBy(first, bake.start()));
        assertThat(again.notes().toString())
                .contains("it is too late by 12 min for this: step 3 comes out of the oven on time; look at it now.");
    }

    @Test
    void going_home_late_is_the_first_wish_to_be_given_up() {
        DaySettings tight =
                settings(Optional.of(planned(settings(Optional.empty())).end().toLocalTime()));
        DayPlan first = planned(tight);
        DayPlan again = replanned(tight, first, TEN.plusMinutes(90), Set.of());
        assertThat(again.notes().toString()).contains("this can no longer be kept and was given up: the day ends by ");
        assertThat(again.end()).isAfter(first.end());
    }

    @Test
    void a_break_that_was_held_is_not_held_again_and_one_that_was_missed_is_due() {
        DaySettings.Break tea = new DaySettings.Break(LocalTime.of(10, 30), LocalTime.of(11, 0), 15);
        DaySettings settings = settings(Optional.empty(), tea);
        DayPlan first = planned(settings);
        Entry pause = Days.row(first, "Break");
        LocalDateTime now = TEN.plusMinutes(90);
        Set<Integer> done = endedBy(first, pause.end());
        assertThat(same(replanned(settings, first, now, done), pause).start()).isEqualTo(pause.start());
        Set<Integer> without = new TreeSet<>(done);
        without.remove(pause.id());
        assertThat(same(replanned(settings, first, now, without), pause).start())
                .isBetween(now, now.plusMinutes(30));
    }
}
