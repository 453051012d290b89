package org.misecue.day;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.Constraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** A project as constraints. Every wish hangs on a literal of its own, so that wishes that conflict can be told. */
final class ProjectModel {

    static {
        Loader.loadNativeLibraries(); // before the first object of the solver
    }

    private final Project project;
    private final Predicate<String> kept;
    private final int horizon;
    private final CpModel model = new CpModel();
    private final List<IntVar> starts = new ArrayList<>();
    private final List<IntervalVar> intervals = new ArrayList<>();
    private final List<List<BoolVar>> inOven = new ArrayList<>();
    private final List<Pause> pauses = new ArrayList<>();
    private final Map<String, BoolVar> wishes = new LinkedHashMap<>();
    private final List<Integer> filmed;
    private final Precedence order;
    private final IntVar end;

    /** A pause in the model: when, and whether it takes place. */
    record Pause(IntVar start, Literal held) {}

    /** @param kept which wishes are to be met; the others are left out */
    ProjectModel(Project project, Predicate<String> kept) {
        this.project = project;
        this.kept = kept;
        this.horizon = project.horizon();
        this.end = model.newIntVar(0, horizon, "end");
        this.filmed = filmed(project);
        this.order = Precedence.of(project);
        project.works().forEach(this::work);
        project.lags().forEach(this::lag);
        project.means().forEach(this::means);
        ovens();
        project.limits().forEach(this::limit);
        moves();
    }

    CpModel model() {
        return model;
    }

    IntVar end() {
        return end;
    }

    List<IntVar> starts() {
        return starts;
    }

    List<List<BoolVar>> inOven() {
        return inOven;
    }

    List<Pause> pauses() {
        return pauses;
    }

    /** The literal of each wish that is kept. */
    Map<String, BoolVar> wishes() {
        return wishes;
    }

    /** When the presenter has done for the day. */
    IntVar lastHand() {
        IntVar last = model.newIntVar(0, horizon, "last hand");
        for (int at = 0; at < starts.size(); at++) {
            if (project.works().get(at).takes().containsKey(Project.PRESENTER)) {
                model.addGreaterOrEqual(last, endOf(at));
            }
        }
        return last;
    }

    /** Hands work in the order told, each when the one before has ended: nobody looks ahead. */
    void inWrittenOrder() {
        List<Integer> hands = IntStream.range(0, starts.size())
                .filter(project::needsHands)
                .boxed()
                .toList();
        for (int at = 1; at < hands.size(); at++) {
            model.addGreaterOrEqual(starts.get(hands.get(at)), endOf(hands.get(at - 1)));
        }
    }

    /** Small where all begins early, but the dials of the ovens are turned late. */
    LinearExpr sumOfStarts() {
        return LinearExpr.weightedSum(
                starts.toArray(IntVar[]::new),
                project.works().stream()
                        .mapToLong(work -> work.isDial() ? -1 : 1)
                        .toArray());
    }

    private void work(Work work) {
        IntVar start = model.newIntVar(0, horizon, "start " + starts.size());
        starts.add(start);
        intervals.add(model.newFixedSizeIntervalVar(start, work.minutes(), "work " + intervals.size()));
        model.addGreaterOrEqual(end, LinearExpr.affine(start, 1, work.minutes()));
    }

    private LinearExpr endOf(int at) {
        return LinearExpr.affine(starts.get(at), 1, project.works().get(at).minutes());
    }

    private Optional<Literal> wish(String words) {
        return kept.test(words) ? Optional.of(wishes.computeIfAbsent(words, model::newBoolVar)) : Optional.empty();
    }

    private void lag(Lag lag) {
        int minutes = project.works().get(lag.before()).minutes();
        model.addGreaterOrEqual(
                starts.get(lag.after()), LinearExpr.affine(starts.get(lag.before()), 1, minutes + lag.least()));
        lag.most().ifPresent(most -> {
            Constraint bound = model.addLessOrEqual(
                    starts.get(lag.after()), LinearExpr.affine(starts.get(lag.before()), 1, minutes + most));
            lag.wish().ifPresent(words -> bound.onlyEnforceIf(wishOrFree(words)));
        });
    }

    /** The literal of a wish; one that is free to be false where the wish is not kept. */
    private Literal wishOrFree(String words) {
        return wish(words).orElseGet(() -> model.newBoolVar("given up"));
    }

    private void means(String name, int number) {
        List<Integer> users = IntStream.range(0, starts.size())
                .filter(at -> project.works().get(at).takes().getOrDefault(name, 0) > 0)
                .filter(at -> project.works().get(at).minutes() > 0)
                .boxed()
                .toList();
        if (number == 1 && away(name).isEmpty()) {
            model.addNoOverlap(users.stream().map(intervals::get).toArray(IntervalVar[]::new));
            return;
        }
        CumulativeConstraint sum = model.addCumulative(number);
        for (int user : users) {
            sum.addDemand(intervals.get(user), project.works().get(user).takes().getOrDefault(name, 0));
        }
        for (Limit.Away away : away(name)) {
            Literal wish = wishOrFree(away.wish());
            sum.addDemand(
                    model.newOptionalFixedSizeIntervalVar(
                            model.newConstant(away.from()), away.to() - away.from(), wish, away.wish()),
                    1);
        }
    }

    private List<Limit.Away> away(String name) {
        return project.limits().stream()
                .filter(Limit.Away.class::isInstance)
                .map(Limit.Away.class::cast)
                .filter(away -> away.means().equals(name))
                .toList();
    }

    private void ovens() {
        List<Integer> bakes = IntStream.range(0, starts.size())
                .filter(at -> project.works().get(at).heat().isPresent())
                .boxed()
                .toList();
        for (int at = 0; at < starts.size(); at++) {
            inOven.add(bakes.contains(at) ? choices(at) : List.of());
        }
        for (int oven = 0; oven < project.ovens(); oven++) {
            CumulativeConstraint shelves = model.addCumulative(project.shelves());
            for (int bake : bakes) {
                shelves.addDemand(
                        model.newOptionalFixedSizeIntervalVar(
                                starts.get(bake),
                                project.works().get(bake).minutes(),
                                inOven.get(bake).get(oven),
                                "in oven"),
                        1);
            }
            apart(bakes, oven);
        }
    }

    private List<BoolVar> choices(int work) {
        List<BoolVar> choices = IntStream.range(0, project.ovens())
                .mapToObj(oven -> model.newBoolVar("work " + work + " in oven " + oven))
                .toList();
        model.addExactlyOne(choices.toArray(Literal[]::new));
        return choices;
    }

    /**
     * What has different heats follows each other in an oven, with the time that it takes to change its heat. From the
     * turning of a dial to the end of its bake the oven has that heat.
     */
    private void apart(List<Integer> bakes, int oven) {
        List<Hot> hot = Hot.of(project, bakes);
        for (int at = 0; at < hot.size(); at++) {
            for (int to = at + 1; to < hot.size(); to++) {
                Hot one = hot.get(at);
                Hot other = hot.get(to);
                if (!one.sharesHeat(other)) {
                    Literal[] both = {
                        inOven.get(one.to()).get(oven), inOven.get(other.to()).get(oven)
                    };
                    BoolVar first = model.newBoolVar("first");
                    follows(other, one, first, both);
                    follows(one, other, first.not(), both);
                }
            }
        }
    }

    private void follows(Hot after, Hot before, Literal chosen, Literal[] both) {
        int minutes = project.works().get(before.to()).minutes();
        model.addGreaterOrEqual(
                        starts.get(after.from()),
                        LinearExpr.affine(
                                starts.get(before.to()),
                                1,
                                minutes + heat(after.from()).heating()))
                .onlyEnforceIf(new Literal[] {chosen, both[0], both[1]});
    }

    private Work.Heat heat(int work) {
        return project.works().get(work).heat().orElseThrow();
    }

    private void limit(Limit limit) {
        if (limit instanceof Limit.Window window) {
            wish(window.wish()).ifPresent(wish -> window.works().forEach(work -> {
                model.addGreaterOrEqual(starts.get(work), window.from()).onlyEnforceIf(wish);
                model.addLessOrEqual(endOf(work), window.to()).onlyEnforceIf(wish);
            }));
        } else if (limit instanceof Limit.At at) {
            wish(at.wish()).ifPresent(wish -> model.addEquality(starts.get(at.work()), at.minute())
                    .onlyEnforceIf(wish));
        } else if (limit instanceof Limit.DayEnd dayEnd) {
            wish(dayEnd.wish()).ifPresent(wish -> model.addLessOrEqual(end, dayEnd.minute())
                    .onlyEnforceIf(wish));
        } else if (limit instanceof Limit.Pause pause) {
            pause(pause);
        } else if (limit instanceof Limit.Begun begun) {
            model.addEquality(starts.get(begun.work()), begun.minute());
        } else if (limit instanceof Limit.InOven place) {
            model.addEquality(inOven.get(place.work()).get(place.oven()), 1);
        } else if (limit instanceof Limit.SameOven same) {
            for (int oven = 0; oven < project.ovens(); oven++) {
                model.addEquality(
                        inOven.get(same.dial()).get(oven),
                        inOven.get(same.bake()).get(oven));
            }
        } else if (limit instanceof Limit.NotBefore notBefore) {
            model.addGreaterOrEqual(starts.get(notBefore.work()), notBefore.minute());
        }
    }

    private void together(int one, int other) {
        for (int oven = 0; oven < project.ovens(); oven++) {
            model.addEquality(inOven.get(one).get(oven), inOven.get(other).get(oven));
        }
    }

    private void pause(Limit.Pause pause) {
        if (pause.minutes() == 0) {
            pauses.add(new Pause(model.newConstant(pause.earliest()), model.falseLiteral()));
            return;
        }
        IntVar start = model.newIntVar(pause.earliest(), pause.latest(), pause.wish());
        BoolVar held = model.newBoolVar("held");
        IntervalVar rest = model.newOptionalFixedSizeIntervalVar(start, pause.minutes(), held, pause.wish());
        IntStream.range(0, starts.size())
                .filter(project::needsHands)
                .forEach(work -> model.addNoOverlap(new IntervalVar[] {rest, intervals.get(work)}));
        wish(pause.wish()).ifPresent(wish -> model.addLessOrEqual(end, pause.latest())
                .onlyEnforceIf(new Literal[] {wish, held.not()}));
        pauses.add(new Pause(start, held));
    }

    /**
     * The camera films one work after the other and moves in between where the set-up is another. As any two set-ups are
     * equally far apart, it is enough to say so of every two works, next to each other or not.
     */
    private void moves() {
        for (int at = 0; at < filmed.size(); at++) {
            for (int next = at + 1; next < filmed.size(); next++) {
                int one = filmed.get(at);
                int other = filmed.get(next);
                if (isElsewhere(one, other)) {
                    if (order.isBefore(one, other)) {
                        then(one, other);
                    } else if (order.isBefore(other, one)) {
                        then(other, one);
                    } else {
                        BoolVar first = model.newBoolVar("first");
                        then(one, other).onlyEnforceIf(first);
                        then(other, one).onlyEnforceIf(first.not());
                    }
                }
            }
        }
    }

    private Constraint then(int one, int other) {
        int minutes = project.works().get(one).minutes() + project.change();
        return model.addGreaterOrEqual(starts.get(other), LinearExpr.affine(starts.get(one), 1, minutes));
    }

    private boolean isElsewhere(int one, int other) {
        return !project.works()
                .get(one)
                .setUp()
                .equals(project.works().get(other).setUp());
    }

    /** The camera goes through the filmed works in an order given. */
    void filmedInOrder(List<Integer> works) {
        for (int at = 1; at < works.size(); at++) {
            model.addGreaterOrEqual(starts.get(works.get(at)), endOf(works.get(at - 1)));
        }
    }

    /** The works that one camera films, in the order told; empty where it never has to move. */
    List<Integer> filmed() {
        return filmed;
    }

    /**
     * Counts how often the camera moves: it goes its way through the filmed works. Where works must follow each other
     * anyway, few ways are open.
     *
     * @return true for each move to another set-up
     */
    List<BoolVar> changes() {
        List<BoolVar> changes = new ArrayList<>();
        CircuitConstraint way = model.addCircuit();
        for (int at = 0; at < filmed.size(); at++) {
            int work = filmed.get(at);
            way.addArc(0, at + 1, model.newBoolVar("first"));
            way.addArc(at + 1, 0, model.newBoolVar("last"));
            for (int to = 0; to < filmed.size(); to++) {
                int next = filmed.get(to);
                if (work != next && order.mayBeNext(work, next, filmed)) {
                    BoolVar taken = model.newBoolVar("from " + work + " to " + next);
                    way.addArc(at + 1, to + 1, taken);
                    model.addGreaterOrEqual(starts.get(next), endOf(work)).onlyEnforceIf(taken);
                    if (isElsewhere(work, next)) {
                        changes.add(taken);
                    }
                }
            }
        }
        return changes;
    }

    private static List<Integer> filmed(Project project) {
        List<Integer> filmed = IntStream.range(0, project.works().size())
                .filter(at -> project.works().get(at).setUp().isPresent())
                .boxed()
                .toList();
        long places = filmed.stream()
                .map(at -> project.works().get(at).setUp())
                .distinct()
                .count();
        boolean oneCamera = project.means().getOrDefault(Project.CAMERA, 1) == 1;
        return places > 1 && oneCamera ? filmed : List.of();
    }
}
