package org.misecue.day;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.recipe.MethodOrder;
import org.misecue.recipe.Recipe;
import org.misecue.shots.ShotPlan;

/** Turns method, shots and kitchen into a project: what is filmed, what waits, what must follow what. */
final class DayBuilder {

    static final String OVEN = "oven";

    private final MethodOrder order;
    private final Holds holds;
    private final DaySettings settings;
    private final ShotsOfStretches shots;
    private final Works works = new Works();
    private final FilmedWorks filmed;
    private final StretchWorks stretches;
    private final Map<Integer, StretchWorks.Span> spans = new HashMap<>();

    DayBuilder(Recipe recipe, ShotPlan plan, DaySettings settings) {
        this.settings = settings;
        this.order = MethodOrder.of(recipe).with(settings.after());
        this.holds = new Holds(recipe, order);
        this.shots = new ShotsOfStretches(order, plan);
        this.filmed = new FilmedWorks(works, settings.lineUp());
        this.stretches = new StretchWorks(works, filmed, new Tools(settings.mixer()), new Subjects(recipe, order));
    }

    Day build() {
        List<Integer> openers = filmed.apart(shots.before(), "Opening");
        for (int at = 0; at < order.stretches().size(); at++) {
            spans.put(at, stretches.of(at, order.stretches().get(at), shots));
        }
        spans.forEach((at, span) -> {
            order.needs(at).forEach(before -> need(before, at));
            openers.forEach(opener -> works.lag(Lag.then(opener, span.first())));
        });
        stretches.dials().tie(works);
        dropIdleWaits();
        closers();
        List<Limit> limits = Stream.concat(works.limits().stream(), new Limits(settings, works.tasks()).list().stream())
                .toList();
        return new Day(
                new Project(
                        works.works(),
                        works.lags(),
                        means(),
                        settings.ovens(),
                        settings.shelves(),
                        settings.change(),
                        limits),
                works.tasks());
    }

    private StretchWorks.Span span(int stretch) {
        return spans.getOrDefault(stretch, StretchWorks.Span.NONE);
    }

    private Map<String, Integer> means() {
        Map<String, Integer> means = new LinkedHashMap<>();
        means.put(Project.PRESENTER, settings.presenters());
        means.put(Project.CAMERA, settings.cameras());
        means.put(Tools.HOB, settings.rings());
        if (settings.mixer()) {
            means.put(Tools.MIXER, 1);
        }
        return means;
    }

    /** What was made earlier is waited for by nobody but the camera that shows it being made. */
    private void need(int before, int at) {
        int madeIn = order.stretches().get(before).step();
        int usedIn = order.stretches().get(at).step();
        if (settings.madeEarlier().contains(madeIn) && madeIn != usedIn) {
            works.lag(Lag.then(span(before).first(), span(at).first()));
            return;
        }
        int from = span(before).last();
        int to = span(at).first();
        span(before).beside().forEach(beside -> works.lag(Lag.then(beside, to)));
        works.lag(holds.between(before, at)
                .map(hold -> Lag.within(
                        from,
                        to,
                        hold.minutes(),
                        "step %d follows step %d within %d min: %s"
                                .formatted(usedIn, madeIn, hold.minutes(), hold.why())))
                .orElseGet(() -> Lag.then(from, to)));
    }

    /** Waits that nothing follows, because something made earlier stands in, need no place in the day. */
    private void dropIdleWaits() {
        Set<Integer> idle = new HashSet<>();
        boolean more = !settings.madeEarlier().isEmpty();
        while (more) {
            more = false;
            for (int at = works.works().size() - 1; at >= 0; at--) {
                if (!idle.contains(at) && isIdle(at, idle)) {
                    more = idle.add(at);
                }
            }
        }
        idle.forEach(works::drop);
    }

    private boolean isIdle(int at, Set<Integer> idle) {
        Task task = works.tasks().get(at);
        return settings.madeEarlier().contains(task.step())
                && task.kind() == Entry.Kind.WAIT
                && works.works().get(at).heat().isEmpty()
                && works.lags().stream().noneMatch(lag -> lag.before() == at && !idle.contains(lag.after()));
    }

    /** The whole bake, once everything else is done. */
    private void closers() {
        List<Integer> ends = works.ends();
        filmed.apart(shots.after(), "Closing").stream()
                .findFirst()
                .ifPresent(closer -> ends.forEach(end -> works.lag(Lag.then(end, closer))));
    }
}
