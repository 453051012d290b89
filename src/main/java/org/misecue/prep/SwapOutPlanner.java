package org.misecue.prep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.misecue.recipe.MethodOrder;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Stretch;
import org.misecue.recipe.Wait;

/** Works out what stands ready before the camera needs it, and what would save waiting if it did. */
final class SwapOutPlanner {

    private static final Map<String, String> STATES = Map.of(
            "bake", "baked",
            "cool", "cooled",
            "prove", "proved",
            "chill", "chilled",
            "freeze", "frozen",
            "set", "set",
            "rest", "rested",
            "soak", "soaked",
            "bloom", "bloomed",
            "toast", "toasted");

    private final Recipe recipe;
    private final MethodOrder order;
    private final List<Bowl> bowls;
    private final FilmingClock clock;

    /** @param bowls those of one take */
    SwapOutPlanner(Recipe recipe, List<Bowl> bowls, FilmingClock clock) {
        this.recipe = recipe;
        this.order = MethodOrder.of(recipe);
        this.bowls = bowls;
        this.clock = clock;
    }

    /** Those that are wanted, in the order of the method. */
    List<SwapOut> wanted(Set<Integer> steps) {
        return new TreeSet<>(steps).stream().map(this::after).toList();
    }

    /** Jobs for what stands ready. */
    List<Job> jobs(Set<Integer> wanted) {
        return MadeEarlier.steps(recipe, wanted).stream()
                .map(step -> job(after(step)))
                .toList();
    }

    private Job job(SwapOut swapOut) {
        int step = swapOut.shownIn() == 0 ? swapOut.after() : swapOut.shownIn();
        return new Job(
                "Begin the one that is made earlier: " + swapOut.state(),
                swapOut.work(),
                "step " + step,
                step,
                swapOut.begin(),
                swapOut.bowls().stream().map(Bowl::number).toList(),
                Optional.empty(),
                "Step %d waits %s; with one that stands ready nobody need wait on the day."
                        .formatted(swapOut.after(), Wording.duration(swapOut.waits())),
                "the recipe, step " + swapOut.after());
    }

    /** What would save the longest waits, longest first. */
    List<SwapOut> worthwhile(Set<Integer> wanted) {
        return order.stretches().stream()
                .filter(stretch -> stretch.waiting().compareTo(MadeEarlier.WORTH_IT) >= 0)
                .map(Stretch::step)
                .distinct()
                .filter(step -> !wanted.contains(step))
                .map(this::after)
                .filter(swapOut -> swapOut.shownIn() > 0)
                .sorted(Comparator.comparing(SwapOut::waits).reversed().thenComparing(SwapOut::after))
                .toList();
    }

    private SwapOut after(int step) {
        NavigableSet<Integer> steps = new TreeSet<>(order.allBefore(step));
        steps.add(step);
        Duration work = order.stretches().stream()
                .filter(stretch -> steps.contains(stretch.step()))
                .map(stretch -> stretch.handsOn().plus(stretch.waiting()))
                .reduce(Duration.ZERO, Duration::plus);
        int shownIn = shownIn(step);
        List<Bowl> own = bowls.stream()
                .filter(bowl -> steps.contains(bowl.step()))
                .map(bowl -> bowl.inSet(0))
                .toList();
        return new SwapOut(
                step,
                state(step, own),
                shownIn,
                List.copyOf(steps),
                own,
                work,
                waits(step),
                clock.clockTime(shownIn == 0 ? step : shownIn, work));
    }

    private Duration waits(int step) {
        return order.of(step).stream()
                .map(at -> order.stretches().get(at).waiting())
                .reduce(Duration.ZERO, Duration::plus);
    }

    /** The first step that needs the work of another. */
    private int shownIn(int step) {
        Set<Integer> places = Set.copyOf(order.of(step));
        for (int at = 0; at < order.stretches().size(); at++) {
            boolean needs = order.needs(at).stream().anyMatch(places::contains);
            if (needs && order.stretches().get(at).step() != step) {
                return order.stretches().get(at).step();
            }
        }
        return 0;
    }

    private String state(int step, List<Bowl> own) {
        List<String> states = new ArrayList<>();
        for (int at : order.of(step)) {
            for (Wait wait : order.stretches().get(at).waits()) {
                states.add(STATES.getOrDefault(wait.what().toLowerCase(Locale.ROOT), ""));
            }
        }
        String state =
                states.stream().filter(word -> !word.isEmpty()).distinct().collect(Collectors.joining(" and "));
        String part = part(step, own);
        return part + (state.isEmpty() ? ", as it is after step " + step : ", " + state);
    }

    /** The part of the dish that the step is about: that of its own bowls, or of most bowls before it. */
    private String part(int step, List<Bowl> own) {
        List<Bowl> its = own.stream().filter(bowl -> bowl.step() == step).toList();
        return (its.isEmpty() ? own : its)
                .stream()
                        .map(Bowl::component)
                        .filter(name -> !name.isEmpty())
                        .collect(Collectors.groupingBy(name -> name, Collectors.counting()))
                        .entrySet()
                        .stream()
                        .max(Map.Entry.<String, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                        .map(Map.Entry::getKey)
                        .orElse(recipe.title());
    }
}
