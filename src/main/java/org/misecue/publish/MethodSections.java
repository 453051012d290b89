package org.misecue.publish;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.recipe.Use;

/**
 * The method by the parts of the dish, where that is certain: each step takes up new ingredients of one part only, and
 * the parts come one after the other. Any other method is one list.
 */
final class MethodSections {

    /** The steps of one part of the dish; without a name where the method is one list. */
    record Section(String part, List<Step> steps) {}

    /** A line of the list, by its place. */
    private record Taken(int component, int line) {}

    private MethodSections() {}

    static List<Section> of(Recipe recipe) {
        List<OptionalInt> parts = new ArrayList<>();
        Set<Taken> taken = new HashSet<>();
        for (Step step : recipe.steps()) {
            List<Integer> fresh = step.uses().stream()
                    .filter(use -> taken.add(new Taken(use.component(), use.line())))
                    .map(Use::component)
                    .distinct()
                    .toList();
            if (fresh.size() > 1) {
                return whole(recipe);
            }
            parts.add(fresh.stream().mapToInt(Integer::intValue).findFirst());
        }
        return sections(recipe, parts);
    }

    /**
     * A step that takes up nothing new goes on with the part before it; one that gets an oven or a tin ready goes with the
     * part after it, and so do those before the first.
     */
    private static List<Section> sections(Recipe recipe, List<OptionalInt> parts) {
        List<Section> sections = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        int part = parts.stream().flatMapToInt(OptionalInt::stream).findFirst().orElse(0);
        int last = -1;
        for (int at = 0; at < parts.size(); at++) {
            part = parts.get(at).orElse(readies(recipe.steps().get(at)) ? next(parts, at, part) : part);
            if (part != last) {
                String name = recipe.components().get(part).name();
                if (name.isEmpty() || !seen.add(part)) {
                    return whole(recipe);
                }
                sections.add(new Section(name, new ArrayList<>()));
                last = part;
            }
            sections.get(sections.size() - 1).steps().add(recipe.steps().get(at));
        }
        return sections.size() > 1 ? sections : whole(recipe);
    }

    private static int next(List<OptionalInt> parts, int at, int otherwise) {
        return parts.stream()
                .skip(at)
                .flatMapToInt(OptionalInt::stream)
                .findFirst()
                .orElse(otherwise);
    }

    private static boolean readies(Step step) {
        return step.uses().isEmpty()
                && !step.techniques().contains("bake")
                && step.settings().stream()
                        .map(Setting::kind)
                        .anyMatch(kind -> kind == Setting.Kind.OVEN_TEMPERATURE || kind == Setting.Kind.PAN);
    }

    private static List<Section> whole(Recipe recipe) {
        return List.of(new Section("", recipe.steps()));
    }
}
