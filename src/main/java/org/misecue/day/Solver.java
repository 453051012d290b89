package org.misecue.day;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Finds the best schedule of a project: the shortest first; among those the one where the presenter has done earliest;
 * among those the one with the fewest changes of set-up; among those the one where all begins earliest. Work is counted,
 * not seconds, so that the same project gives the same schedule on any machine.
 */
final class Solver {

    /** What came of it. */
    sealed interface Outcome permits Found, Conflict, GaveUp {}

    /** A schedule. */
    record Found(Schedule schedule) implements Outcome {}

    /**
     * No schedule meets all wishes.
     *
     * @param wishes a smallest set of those that conflict; empty where the works themselves do
     */
    record Conflict(List<String> wishes) implements Outcome {}

    /** Neither was found within the effort. */
    record GaveUp() implements Outcome {}

    /**
     * How hard to try.
     *
     * @param workers searches side by side; they take turns, so that their number decides what is found and not the
     *     machine
     * @param effort the solver's own measure of work for each of its aims; about seconds of a fast machine
     */
    record Effort(int workers, double effort, boolean repeatable) {

        /** Some seconds; enough to prove most days of up to 50 tasks best, as far as measured. */
        static final Effort USUAL = new Effort(8, 2, true);

        /** For what is only an estimate beside a plan. */
        static final Effort QUICK = new Effort(8, 0.4, true);

        /** For what comes after the shortest end. */
        Effort less() {
            return new Effort(workers, effort / 4, repeatable);
        }
    }

    private final Project project;
    private final Effort effort;
    private final IntConsumer better;

    /** @param better is told each shorter end as it is found */
    Solver(Project project, Effort effort, IntConsumer better) {
        this.project = project;
        this.effort = effort;
        this.better = better;
    }

    Outcome best() {
        Attempt shortest = attempt(Bounds.NONE, Aim.END);
        if (shortest.status == CpSolverStatus.INFEASIBLE) {
            return new Conflict(conflict());
        }
        if (!shortest.found()) {
            return new GaveUp();
        }
        OptionalInt end = OptionalInt.of(shortest.value());
        Attempt handy = refine(shortest, new Bounds(end, OptionalInt.empty(), List.of()), Aim.LAST_HAND);
        OptionalInt last = OptionalInt.of(handy.lastHand());
        Attempt calm =
                handy.model.filmed().isEmpty() ? handy : refine(handy, new Bounds(end, last, List.of()), Aim.CHANGES);
        Attempt early = refine(calm, new Bounds(end, last, calm.filmed()), Aim.STARTS);
        return new Found(early.schedule(shortest.status == CpSolverStatus.OPTIMAL));
    }

    /** Only the shortest, for problems that have nothing else. */
    Outcome shortest() {
        Attempt attempt = attempt(Bounds.NONE, Aim.END);
        return attempt.found() ? new Found(attempt.schedule(attempt.status == CpSolverStatus.OPTIMAL)) : new GaveUp();
    }

    /** The shortest day for hands that follow the order told and never work ahead; food waits as it must, and nobody goes home. */
    Outcome inWrittenOrder() {
        Set<String> clock = project.limits().stream()
                .filter(limit -> !(limit instanceof Limit.DayEnd))
                .map(Limit::wish)
                .collect(Collectors.toSet());
        Attempt attempt = new Attempt(new ProjectModel(project, clock::contains), effort);
        attempt.model.wishes().values().forEach(wish -> attempt.model.model().addEquality(wish, 1));
        attempt.model.inWrittenOrder();
        attempt.aim(Aim.END);
        attempt.run();
        return attempt.found() ? new Found(attempt.schedule(attempt.status == CpSolverStatus.OPTIMAL)) : new GaveUp();
    }

    private enum Aim {
        END,
        LAST_HAND,
        CHANGES,
        STARTS
    }

    /** What was reached before: an end, a last hand, an order of filming. */
    private record Bounds(OptionalInt end, OptionalInt lastHand, List<Integer> filmed) {
        private static final Bounds NONE = new Bounds(OptionalInt.empty(), OptionalInt.empty(), List.of());
    }

    private Attempt attempt(Bounds bounds, Aim aim) {
        Attempt attempt = new Attempt(new ProjectModel(project, wish -> true), effort);
        attempt.model.wishes().values().forEach(wish -> attempt.model.model().addEquality(wish, 1));
        attempt.bound(bounds);
        attempt.aim(aim);
        attempt.run();
        return attempt;
    }

    /** A better one of the same, or the same. */
    private Attempt refine(Attempt known, Bounds bounds, Aim aim) {
        Attempt attempt = new Attempt(new ProjectModel(project, wish -> true), effort.less());
        attempt.model.wishes().values().forEach(wish -> attempt.model.model().addEquality(wish, 1));
        attempt.bound(bounds);
        attempt.aim(aim);
        attempt.hint(known);
        attempt.run();
        return attempt.found() ? attempt : known;
    }

    /** A set of wishes that cannot be met together, while any of them can be met without one of the others. */
    private List<String> conflict() {
        Set<String> suspects = new LinkedHashSet<>(
                new ProjectModel(project, wish -> true).wishes().keySet());
        for (String wish : List.copyOf(suspects)) {
            Set<String> without = new LinkedHashSet<>(suspects);
            without.remove(wish);
            if (isImpossible(without)) {
                suspects = without;
            }
        }
        return List.copyOf(suspects);
    }

    private boolean isImpossible(Set<String> wishes) {
        Attempt attempt = new Attempt(new ProjectModel(project, wishes::contains), effort);
        attempt.model.wishes().values().forEach(wish -> attempt.model.model().addEquality(wish, 1));
        attempt.run();
        return attempt.status == CpSolverStatus.INFEASIBLE;
    }

    /** One run of the solver on one model. */
    private final class Attempt {

        private final ProjectModel model;
        private final CpSolver solver;
        private final Optional<IntVar> lastHand;
        private Aim aim = Aim.STARTS;
        private CpSolverStatus status = CpSolverStatus.UNKNOWN;

        private Attempt(ProjectModel model, Effort spent) {
            this.model = model;
            this.lastHand = Optional.of(model.lastHand());
            this.solver = new CpSolver();
            var parameters = solver.getParameters();
            parameters.setNumWorkers(spent.workers());
            parameters.setRandomSeed(1);
            if (spent.repeatable()) {
                parameters.setInterleaveSearch(true);
                parameters.setMaxDeterministicTime(spent.effort());
            } else {
                parameters.setMaxTimeInSeconds(spent.effort());
            }
        }

        private void bound(Bounds bounds) {
            bounds.end().ifPresent(most -> model.model().addLessOrEqual(model.end(), most));
            bounds.lastHand().ifPresent(most -> model.model().addLessOrEqual(lastHand.orElseThrow(), most));
            model.filmedInOrder(bounds.filmed());
        }

        private void aim(Aim wanted) {
            aim = wanted;
            switch (wanted) {
                case END -> model.model().minimize(model.end());
                case LAST_HAND -> model.model().minimize(lastHand.orElseThrow());
                case CHANGES -> model.model().minimize(sum(model.changes()));
                case STARTS -> model.model().minimize(model.sumOfStarts());
            }
        }

        private void hint(Attempt known) {
            for (int at = 0; at < model.starts().size(); at++) {
                model.model()
                        .addHint(
                                model.starts().get(at),
                                known.solver.value(known.model.starts().get(at)));
            }
        }

        private void run() {
            status = aim == Aim.END
                    ? solver.solve(model.model(), new CpSolverSolutionCallback() {
                        @Override
                        public void onSolutionCallback() {
                            better.accept((int) Math.round(objectiveValue()));
                        }
                    })
                    : solver.solve(model.model());
            if (status == CpSolverStatus.MODEL_INVALID) {
                throw new IllegalStateException(model.model().validate());
            }
        }

        private boolean found() {
            return status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        }

        private int value() {
            return (int) Math.round(solver.objectiveValue());
        }

        private int lastHand() {
            return (int) solver.value(lastHand.orElseThrow());
        }

        /** The filmed works as they follow each other. */
        private List<Integer> filmed() {
            return model.filmed().stream()
                    .sorted(Comparator.comparingLong((Integer work) ->
                                    solver.value(model.starts().get(work)))
                            .thenComparing(work -> work))
                    .toList();
        }

        private Schedule schedule(boolean proved) {
            List<Integer> ovens = new ArrayList<>();
            for (List<BoolVar> choices : model.inOven()) {
                ovens.add(IntStream.range(0, choices.size())
                        .filter(oven -> solver.booleanValue(choices.get(oven)))
                        .findFirst()
                        .orElse(-1));
            }
            return new Schedule(
                    model.starts().stream()
                            .map(start -> (int) solver.value(start))
                            .toList(),
                    ovens,
                    model.pauses().stream()
                            .map(pause -> solver.booleanValue(pause.held()) ? (int) solver.value(pause.start()) : -1)
                            .toList(),
                    IntStream.range(0, model.starts().size())
                            .map(at -> (int) solver.value(model.starts().get(at))
                                    + project.works().get(at).minutes())
                            .max()
                            .orElse(0),
                    proved);
        }
    }

    private static LinearExpr sum(List<BoolVar> literals) {
        return LinearExpr.sum(literals.toArray(Literal[]::new));
    }
}
