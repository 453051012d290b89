package org.misecue.recipe;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * A method as stretches of work, and which of them need the work of which others: icing can be made while the cake
 * bakes, but goes on when it is cold. Read from the words; where these leave it open, a stretch waits for all that could
 * be meant, so that a plan made from this may lose time but should not ask for what is not there yet. A stretch needs
 * only stretches before it.
 */
public final class MethodOrder {

    private final List<Stretch> stretches;
    private final List<NavigableSet<Integer>> needs;
    private final List<NavigableSet<Integer>> hot;

    private MethodOrder(List<Stretch> stretches, List<NavigableSet<Integer>> needs, List<NavigableSet<Integer>> hot) {
        this.stretches = stretches;
        this.needs = needs;
        this.hot = hot;
    }

    /** The same recipe always gives the same order. */
    public static MethodOrder of(Recipe recipe) {
        List<Stretch> stretches = StretchReader.read(recipe);
        List<NeedFinder.Needs> found = new NeedFinder(recipe, stretches).find();
        return new MethodOrder(
                stretches,
                found.stream().map(NeedFinder.Needs::before).toList(),
                found.stream().map(NeedFinder.Needs::hot).toList());
    }

    /**
     * The same order with what a person says of some steps.
     *
     * @param corrections for each step all the steps that must be done before it
     */
    public MethodOrder with(Map<Integer, ? extends Set<Integer>> corrections) {
        List<NavigableSet<Integer>> corrected = new ArrayList<>(needs);
        corrections.forEach((step, steps) -> of(step).forEach(at -> {
            NavigableSet<Integer> before = new TreeSet<>();
            if (stretches.get(at).turn() > 1) {
                before.add(at - 1);
            } else {
                steps.stream()
                        .flatMap(other -> of(other).stream())
                        .filter(other -> other < at)
                        .forEach(before::add);
            }
            corrected.set(at, before);
        }));
        return new MethodOrder(stretches, corrected, hot);
    }

    /** In the order of the method. */
    public List<Stretch> stretches() {
        return stretches;
    }

    /** The places of the stretches of a step. */
    public List<Integer> of(int step) {
        return IntStream.range(0, stretches.size())
                .filter(at -> stretches.get(at).step() == step)
                .boxed()
                .toList();
    }

    /** The stretches, by their places, that must be done right before one; without those that they need themselves. */
    public NavigableSet<Integer> needs(int stretch) {
        NavigableSet<Integer> direct = new TreeSet<>(needs.get(stretch));
        needs.get(stretch).forEach(before -> direct.removeAll(reach(before)));
        return Collections.unmodifiableNavigableSet(direct);
    }

    /** Whether a stretch takes the work of the other while it is hot, as "spoon the syrup over the hot cake" says. */
    public boolean takesHot(int stretch, int from) {
        return hot.get(stretch).contains(from);
    }

    /** Every step that must be begun before a step can end, those that are needed by what it needs among them. */
    public NavigableSet<Integer> allBefore(int step) {
        NavigableSet<Integer> steps = new TreeSet<>();
        of(step).forEach(at ->
                reach(at).forEach(other -> steps.add(stretches.get(other).step())));
        steps.remove(step);
        return Collections.unmodifiableNavigableSet(steps);
    }

    /** Every stretch that must be done before one. */
    public NavigableSet<Integer> reach(int stretch) {
        NavigableSet<Integer> all = new TreeSet<>();
        List<Integer> open = new ArrayList<>(needs.get(stretch));
        while (!open.isEmpty()) {
            int next = open.remove(open.size() - 1);
            if (all.add(next)) {
                open.addAll(needs.get(next));
            }
        }
        return Collections.unmodifiableNavigableSet(all);
    }
}
