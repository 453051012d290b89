package org.misecue.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.misecue.recipe.Component;
import org.misecue.spoken.Mechanism;
import org.misecue.spoken.NameHit;
import org.misecue.spoken.Words;

/**
 * Where the speaker says which part of the recipe is meant: "in the syrup", "for the dip", "right, the buttercream". It
 * tells the sugar of the one from the sugar of the other.
 */
final class Locators {

    private static final int REACH_BACK = 30;
    private static final int REACH_ON = 5;
    private static final int DONE_REACH = 6;
    private static final int LIKENED_REACH = 8;
    /** "three quarters of the butter you had in the pudding". */
    private static final Set<String> TIMES = Words.set("half quarter quarters third thirds twice double triple times");

    private static final Set<String> DOING = Words.set("had used put did got went took gave needed");
    private static final Set<String> PLACED = Words.set("it that they is are in into the my our your");

    /** Stands for no part: the one that was spoken of is done with. */
    private static final int OVER = -1;

    private static final Set<String> LEADING =
            Words.set("the this that our your my for in a these those our both same");
    private static final Set<String> TOO_COMMON = Words.set("top finish finishing serving serve decoration base");
    /** What parts of a bake are called once they are made. From memory. */
    private static final Set<String> MADE = Words.set(
            "dough batter sponge pastry icing filling sauce syrup glaze topping crumb paste dip caramel ganache "
                    + "buttercream custard compote frosting meringue curd jelly crust");

    private static final Set<String> BEGINS_ANEW = Set.of("and", "then", "so", "now");
    private static final Set<String> LATER = Set.of("later", "afterwards", "after", "earlier");
    private static final Set<String> PLACING = Set.of("for", "in", "into");

    private final Hearing heard;
    private final Map<String, Integer> telling;
    private final TreeMap<Integer, Integer> componentAt = new TreeMap<>();

    Locators(Hearing heard) {
        this.heard = heard;
        this.telling = telling(heard.recipe.components());
        boolean[] inName = new boolean[heard.words.size()];
        for (NameHit name : heard.names) {
            for (int at = name.start(); at < name.end() && name.inRecipe(); at++) {
                inName[at] = true;
            }
        }
        for (int at = 0; at < heard.words.size(); at++) {
            Integer component = telling.get(Words.singular(heard.words.text(at)));
            if (heard.on(Mechanism.COMPONENTS_NAMED)
                    && component != null
                    && !inName[at]
                    && isLed(at)
                    && !isLikened(at)
                    && !LATER.contains(heard.words.text(at + 1))) {
                componentAt.put(at, isDone(at) ? OVER : component);
            }
        }
    }

    /** "that you've got already, it's in the sponge": what comes next is of another part. */
    private boolean isDone(int at) {
        int before = at - 1;
        while (before > at - DONE_REACH && PLACED.contains(heard.words.text(before))) {
            before--;
        }
        return heard.words.text(before).equals("already") && before < at - 1;
    }

    /** "the same as I put in the pudding": of another part no more is told than an amount. */
    private boolean isLikened(int at) {
        if (heard.words.normal(at - 2, at).equals("half a")) {
            return true; // "whether it's half a pudding or a whole one"
        }
        for (int same = at - 1; same >= at - LIKENED_REACH; same--) {
            if (heard.words.text(same).equals("same")
                    && heard.words.text(same + 1).equals("as")) {
                return true;
            }
            if (TIMES.contains(heard.words.text(same)) && heard.words.saysAny(DOING, same, at)) {
                return true;
            }
        }
        return false;
    }

    private boolean isLed(int at) {
        boolean common = TOO_COMMON.contains(heard.words.text(at));
        String before = heard.words.text(at - 1);
        if (common) {
            return before.equals("the") && heard.words.text(at - 2).equals("for");
        }
        return heard.words.border(at) || LEADING.contains(before) || LEADING.contains(heard.words.text(at - 2));
    }

    /** The words that name one component and no other. */
    private Map<String, Integer> telling(List<Component> components) {
        Map<String, List<Integer>> having = new HashMap<>();
        for (int c = 0; c < components.size(); c++) {
            for (String word : Words.content(components.get(c).name())) {
                having.computeIfAbsent(word, k -> new ArrayList<>()).add(c);
            }
        }
        Map<String, Integer> telling = new HashMap<>();
        for (String made : MADE) {
            List<Integer> making = componentsMaking(made);
            if (making.size() == 1 && !telling.containsKey(made)) {
                telling.put(made, making.get(0));
            }
        }
        if (components.size() > 1) {
            having.forEach((word, found) -> {
                if (found.size() == 1) {
                    telling.put(word, found.get(0));
                }
            });
        }
        return telling;
    }

    /** The components whose steps speak of it: the dough of the crackers, the batter of the cake. */
    private List<Integer> componentsMaking(String made) {
        List<Integer> having = new ArrayList<>();
        for (int c = 0; c < heard.recipe.components().size(); c++) {
            int component = c;
            boolean makes = heard.recipe.steps().stream()
                    .anyMatch(step ->
                            Words.content(step.text()).contains(made) && heard.stepIn(step.number(), component));
            if (makes) {
                having.add(c);
            }
        }
        return having;
    }

    /** The component that the word there names and no other; empty for other words. */
    Optional<Integer> named(int at) {
        return Optional.ofNullable(telling.get(Words.singular(heard.words.text(at))));
    }

    /** The component that is spoken of around an amount; empty where none is named nearby. */
    OptionalInt around(int start, int end) {
        Map.Entry<Integer, Integer> after = componentAt.ceilingEntry(end);
        if (after != null
                && after.getValue() != OVER
                && after.getKey() < end + REACH_ON
                && isPlaced(after.getKey(), end)) {
            return OptionalInt.of(after.getValue());
        }
        Map.Entry<Integer, Integer> before = componentAt.lowerEntry(start);
        return before != null
                        && start - before.getKey() <= REACH_BACK
                        && heard.sameSource(before.getKey(), start)
                        && before.getValue() != OVER
                ? OptionalInt.of(before.getValue())
                : OptionalInt.empty();
    }

    /** "… in the cake", "… of sugar for the glaze", with nothing begun anew between. */
    private boolean isPlaced(int at, int end) {
        for (int i = end; i < at; i++) {
            if (heard.words.wall(i) || BEGINS_ANEW.contains(heard.words.text(i))) {
                return false;
            }
            if (PLACING.contains(heard.words.text(i))) {
                return true;
            }
        }
        return false;
    }
}
