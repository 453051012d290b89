package org.misecue.day;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.misecue.quantity.QuantityWriter;
import org.misecue.recipe.Component;
import org.misecue.recipe.MethodOrder;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Stretch;
import org.misecue.recipe.Use;
import org.misecue.recipe.Wait;

/** What a stretch of work is about, for the rows of the call sheet: the part of the dish, or the dish. */
final class Subjects {

    private final MethodOrder order;
    private final Recipe recipe;
    private final Map<Integer, String> names = new HashMap<>();

    Subjects(Recipe recipe, MethodOrder order) {
        this.order = order;
        this.recipe = recipe;
        for (int at = 0; at < order.stretches().size(); at++) {
            names.put(at, name(at));
        }
    }

    /** "cake: fold, bake". */
    String doing(int stretch, List<String> techniques) {
        String words = techniques.stream().map(key -> key.replace('-', ' ')).collect(Collectors.joining(", "));
        return named(stretch, words.isEmpty() ? "work by hand" : words);
    }

    /** "cake bakes at 180 °C". */
    String waiting(int stretch, Wait wait) {
        String verb =
                switch (wait.what()) {
                    case "bake" -> "bakes";
                    case "cool" -> "cools";
                    case "prove" -> "proves";
                    case "chill" -> wait.where() == Wait.Where.FREEZER ? "freezes" : "chills";
                    case "rest" -> "rests";
                    case "set" -> "sets";
                    case "soak" -> "soaks";
                    case "bloom" -> "blooms";
                    case "toast" -> "toasts";
                    default -> "waits";
                };
        String heat =
                wait.oven().map(oven -> " at " + QuantityWriter.text(oven)).orElse("");
        return named(stretch, verb + heat + (wait.stated() ? "" : ", about: no time is given"));
    }

    /** "cake out of the oven". */
    String takingOut(int stretch) {
        return named(stretch, "out of the oven");
    }

    /** "loaf: turn the oven, as the step says". */
    String turning(int stretch) {
        return named(stretch, "stays in while the oven is turned, as the step says");
    }

    private String named(int stretch, String doing) {
        String name = names.getOrDefault(stretch, "");
        return name.isEmpty() ? doing : name + ": " + doing;
    }

    /** The part that most of what goes in belongs to, or else that of the work it goes on with. */
    private String name(int at) {
        Stretch stretch = order.stretches().get(at);
        List<String> taken = order.needs(at).stream()
                .map(before -> names.getOrDefault(before, ""))
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
        if (taken.size() > 1) {
            return largest(taken);
        }
        Map<Integer, Long> parts =
                stretch.uses().stream().collect(Collectors.groupingBy(Use::component, Collectors.counting()));
        return parts.entrySet().stream()
                .max(Map.Entry.<Integer, Long>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .map(part -> recipe.components().get(part.getKey()).name())
                .or(() -> order.needs(at).descendingSet().stream()
                        .findFirst()
                        .map(before -> names.getOrDefault(before, "")))
                .orElse("");
    }

    /** Where parts come together, the one with most in it lends its name. */
    private String largest(List<String> parts) {
        return recipe.components().stream()
                .filter(part -> parts.contains(part.name()))
                .max(Comparator.comparingInt(part -> part.lines().size()))
                .map(Component::name)
                .orElse(parts.get(0));
    }
}
