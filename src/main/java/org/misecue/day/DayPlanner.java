package org.misecue.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.misecue.notice.BadInput;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.prep.MadeEarlier;
import org.misecue.prep.PrepPlan;
import org.misecue.recipe.MethodOrder;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Stretch;
import org.misecue.shots.ShotPlan;

/** Plans the filming day: the way into this package. The same input always gives the same plan. */
public final class DayPlanner {

    private static final Duration WORTH_TELLING = Duration.ofMinutes(10);
    private static final int MOST_STAND_INS = 4;

    private final Recipe recipe;
    private final PrepPlan prep;
    private final ShotPlan shots;
    private final DaySettings settings;
    private final Consumer<String> progress;
    private final List<Note> notes = new ArrayList<>();

    /**
     * @param recipe the recipe of the bowls and shots
     * @param settings who is there and what the clock asks
     * @param progress is told what goes on, for a person who waits
     * @throws BadInput if the settings name a step that the method does not have
     */
    public DayPlanner(Recipe recipe, PrepPlan prep, ShotPlan shots, DaySettings settings, Consumer<String> progress) {
        this.recipe = recipe;
        this.prep = prep;
        this.shots = shots;
        MadeEarlier.known(recipe, settings.madeEarlier(), "made-earlier");
        settings.after().forEach((step, before) -> {
            MadeEarlier.known(recipe, Set.of(step), "day: after");
            MadeEarlier.known(recipe, before, "day: after");
        });
        this.settings = withLongWaits(recipe, settings);
        if (!settings.dated()) {
            notes.add(new Note(
                    Place.of("episode.yaml"),
                    "no day is named, so the first shot was taken to be at %s; write for example first-shot: 2026-05-04 10:00."
                            .formatted(settings.firstShot().toLocalTime())));
        }
        this.progress = progress;
    }

    /**
     * The shortest day; where what the food asks contradicts itself, without a part of that, and a note says so. Among the
     * shortest the one where the presenter has done earliest, then the one with the fewest changes of
     * set-up.
     *
     * @throws BadInput if the wishes of the settings cannot all be met; it names those that conflict
     */
    public DayPlan plan() {
        Day day = new DayBuilder(recipe, shots, settings).build();
        Project project = day.project();
        Solver.Outcome outcome = tried(project);
        while (outcome instanceof Solver.Conflict conflict && isOfFoodAlone(conflict, project)) {
            String wish = conflict.wishes().get(0);
            String others = conflict.wishes().size() == 1
                    ? "with these shots and set-ups"
                    : "with the others: "
                            + String.join(
                                    "; ",
                                    conflict.wishes()
                                            .subList(1, conflict.wishes().size()));
            notes.add(new Note(
                    Place.of(recipe.source()),
                    "this was given up: %s; it cannot be kept %s. Film both in one set-up, or say under “day: after” what comes after what."
                            .formatted(wish, others)));
            project = project.without(wish);
            outcome = tried(project);
        }
        Schedule schedule = found(outcome);
        progress.accept("Comparing with the order of the recipe");
        Optional<LocalDateTime> naive = naiveEnd(project);
        List<DayPlan.StandIn> standIns = standIns(schedule.end());
        return sheet(new Day(project, day.tasks()), schedule, CriticalPath.of(project, schedule))
                .plan(naive, standIns, notes);
    }

    /**
     * What is left of a day that has come so far. A wish that it is too late for is given up, the end of the day first, and a note says so.
     */
    public DayPlan replan(Standing standing) {
        Day day = new DayBuilder(recipe, shots, settings).build();
        LateDay late = new LateDay(day, standing, settings.firstShot());
        notes.addAll(late.notes(recipe.source()));
        Project rest = late.project();
        Solver.Outcome outcome = tried(rest);
        while (outcome instanceof Solver.Conflict conflict && !conflict.wishes().isEmpty()) {
            String wish = leastMissed(rest, conflict.wishes());
            notes.add(new Note(Place.of("episode.yaml"), "this can no longer be kept and was given up: " + wish + "."));
            rest = rest.without(wish);
            outcome = tried(rest);
        }
        Schedule schedule = found(outcome);
        DayPlan plan = sheet(late.shown(rest), late.shown(schedule), CriticalPath.of(rest, schedule))
                .plan(Optional.empty(), List.of(), notes);
        return new LateRows(day, late, standing).mark(plan);
    }

    private CallSheet sheet(Day day, Schedule schedule, Set<Integer> critical) {
        return new CallSheet(recipe.title(), new Timed(day, schedule, settings.firstShot()), settings, prep, critical);
    }

    /** What food asks is read from words and habit; it must not keep people from a plan when nobody else asks. */
    private static boolean isOfFoodAlone(Solver.Conflict conflict, Project project) {
        return !conflict.wishes().isEmpty()
                && project.limits().stream().map(Limit::wish).noneMatch(conflict.wishes()::contains);
    }

    /** People go home late rather than that the food spoils. */
    private static String leastMissed(Project project, List<String> wishes) {
        return project.limits().stream()
                .filter(Limit.DayEnd.class::isInstance)
                .map(Limit::wish)
                .filter(wishes::contains)
                .findFirst()
                .orElse(wishes.get(0));
    }

    private Solver.Outcome tried(Project project) {
        progress.accept("Planning the day: " + project.works().size() + " works");
        return new Solver(project, Solver.Effort.USUAL, end -> progress.accept("Planning the day: " + end + " min"))
                .best();
    }

    private static Schedule found(Solver.Outcome outcome) {
        if (outcome instanceof Solver.Found found) {
            return found.schedule();
        }
        throw new BadInput(Place.of("episode.yaml"), reason(outcome));
    }

    private static String reason(Solver.Outcome outcome) {
        if (outcome instanceof Solver.Conflict conflict && !conflict.wishes().isEmpty()) {
            return conflict.wishes().size() == 1
                    ? "this wish cannot be met: " + conflict.wishes().get(0) + "; change it or give it up."
                    : "these wishes cannot all be met: " + String.join("; ", conflict.wishes())
                            + "; change or give up one of them.";
        }
        return outcome instanceof Solver.Conflict
                ? "the times of the method leave no plan; say under “day: after” what comes after what, or correct the method."
                : "no plan was found in the time given; give up a wish of the day.";
    }

    private Optional<LocalDateTime> naiveEnd(Project project) {
        return new Solver(project, Solver.Effort.QUICK, end -> {}).inWrittenOrder() instanceof Solver.Found found
                ? Optional.of(settings.firstShot().plusMinutes(found.schedule().end()))
                : Optional.empty();
    }

    private List<DayPlan.StandIn> standIns(int end) {
        List<DayPlan.StandIn> standIns = new ArrayList<>();
        MethodOrder order = MethodOrder.of(recipe).with(settings.after());
        List<Stretch> waiting = order.stretches().stream()
                .filter(stretch -> stretch.waiting().compareTo(MadeEarlier.WORTH_IT) >= 0)
                .filter(stretch -> !settings.madeEarlier().contains(stretch.step()))
                .sorted(Comparator.comparing(Stretch::waiting).reversed().thenComparing(Stretch::step))
                .limit(MOST_STAND_INS)
                .toList();
        Set<Integer> seen = new HashSet<>();
        for (Stretch stretch : waiting) {
            if (seen.add(stretch.step())) {
                progress.accept("Trying what one made earlier would save: step " + stretch.step());
                Set<Integer> made = new TreeSet<>(settings.madeEarlier());
                made.add(stretch.step());
                Project project = new DayBuilder(recipe, shots, settings.withMadeEarlier(made))
                        .build()
                        .project();
                if (new Solver(project, Solver.Effort.QUICK, any -> {}).shortest() instanceof Solver.Found found) {
                    Duration saves =
                            Duration.ofMinutes((long) end - found.schedule().end());
                    if (saves.compareTo(WORTH_TELLING) >= 0) {
                        standIns.add(new DayPlan.StandIn(stretch.step(), saves));
                    }
                }
            }
        }
        standIns.sort(Comparator.comparing(DayPlan.StandIn::saves).reversed().thenComparing(DayPlan.StandIn::step));
        return standIns;
    }

    private DaySettings withLongWaits(Recipe written, DaySettings given) {
        Set<Integer> made = new TreeSet<>(given.madeEarlier());
        for (Stretch stretch : MethodOrder.of(written).stretches()) {
            if (MadeEarlier.isTooLong(stretch) && made.add(stretch.step())) {
                notes.add(new Note(
                        Place.of(written.source(), line(written, stretch.step())),
                        "step %d waits %d h, longer than a day of filming can; one is taken as made earlier: write made-earlier: [%d] in episode.yaml, so that its bowls are set out."
                                .formatted(stretch.step(), stretch.waiting().toHours(), stretch.step())));
            }
        }
        return given.withMadeEarlier(made);
    }

    private static int line(Recipe recipe, int step) {
        return IntStream.range(0, recipe.steps().size())
                .filter(at -> recipe.steps().get(at).number() == step)
                .map(at -> recipe.steps().get(at).line())
                .findFirst()
                .orElse(0);
    }
}
