package org.misecue.shots;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.prep.Bowl;
import org.misecue.recipe.Step;

/**
 * What is in the bowl, step by step: for each part of the dish the foods that went in, and whether they were cooked
 * since. A step that names no ingredient goes on with the part before it. A dry mix with which a part begins waits in a
 * bowl of its own until a step speaks of it.
 */
final class Mixture {

    private static final String RAW = "raw ";

    /** Dry things are not always called by their names when they join. */
    private static final Pattern JOINS = Pattern.compile(
            "\\b(?:dry|flour|mix(?:ture)?s|bowls|everything|remaining|rest|all|ingredients)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final class Food {
        private final String words;
        private boolean raw = true;
        private boolean apart;

        private Food(String words, boolean apart) {
            this.words = words;
            this.apart = apart;
        }
    }

    private final Map<String, List<Food>> parts = new HashMap<>();
    private Set<String> current = Set.of();

    /** A step begins that uses these bowls. */
    void begin(Step step, List<Bowl> bowls) {
        if (!bowls.isEmpty()) {
            current = bowls.stream().map(Bowl::component).collect(Collectors.toCollection(TreeSet::new));
        }
        if (bowls.isEmpty() || JOINS.matcher(step.text()).find()) {
            held().forEach(food -> food.apart = false);
        }
    }

    void add(Action action) {
        action.bowls().forEach(bowl -> {
            List<Food> part = parts.computeIfAbsent(bowl.component(), none -> new ArrayList<>());
            boolean apart = part.isEmpty()
                    && bowl.contents().size() > 1
                    && action.bowls().size() == 1;
            bowl.contents().forEach(content -> part.add(new Food(plain(content.ingredient()), apart)));
        });
        action.loose().forEach(thing -> parts.computeIfAbsent(thing.component(), none -> new ArrayList<>())
                .add(new Food(plain(thing.line().ingredient()), false)));
    }

    void cook() {
        held().forEach(food -> food.raw = false);
    }

    /** Whether one of the foods goes in with this action or is in it already: "sugar", or "raw egg" for what is not cooked. */
    boolean holds(List<String> foods, Action action) {
        List<String> goingIn = action.bowls().stream()
                .flatMap(bowl -> bowl.contents().stream())
                .map(content -> plain(content.ingredient()))
                .toList();
        return foods.stream().anyMatch(food -> holds(food, goingIn));
    }

    private boolean holds(String food, List<String> goingIn) {
        boolean raw = food.startsWith(RAW);
        String words = " " + (raw ? food.substring(RAW.length()) : food) + " ";
        return held().filter(held -> !held.apart || goingIn.contains(held.words))
                .anyMatch(held -> held.words.contains(words) && (held.raw || !raw));
    }

    private Stream<Food> held() {
        return current.stream().flatMap(part -> parts.getOrDefault(part, List.of()).stream());
    }

    /** The pantry's name for it, or its own, in singular words between blanks: " egg white ". */
    private static String plain(String ingredient) {
        Optional<String> known = Pantry.standard().find(ingredient).map(Ingredient::name);
        return Arrays.stream(known.orElse(ingredient).toLowerCase(Locale.ROOT).split("[^\\p{L}\\d-]+"))
                .map(word -> word.endsWith("s") && !word.endsWith("ss") ? word.substring(0, word.length() - 1) : word)
                .collect(Collectors.joining(" ", " ", " "));
    }
}
