package org.misecue.align;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.recipe.Component;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.recipe.Use;

/** Which ingredient lines each step uses, as indexes into {@code Recipe.lines()}. */
final class StepLines {

    private final Recipe recipe;
    private final List<Set<Integer>> ofStep;

    StepLines(Recipe recipe) {
        this.recipe = recipe;
        this.ofStep = recipe.steps().stream().map(step -> linesOf(recipe, step)).toList();
    }

    private static Set<Integer> linesOf(Recipe recipe, Step step) {
        Set<Integer> lines = new HashSet<>();
        for (Use use : step.uses()) {
            lines.add(firstLine(recipe, use.component()) + use.line());
        }
        return lines;
    }

    private static int firstLine(Recipe recipe, int component) {
        return recipe.components().subList(0, component).stream()
                .mapToInt(before -> before.lines().size())
                .sum();
    }

    /** @param step from 1 */
    Set<Integer> of(int step) {
        return ofStep.get(step - 1);
    }

    /** The steps, from 1, that use any of the lines. */
    List<Integer> using(Set<Integer> lines) {
        return IntStream.rangeClosed(1, ofStep.size())
                .filter(step -> of(step).stream().anyMatch(lines::contains))
                .boxed()
                .toList();
    }

    /** The first step, from 1, that is mostly about the component; empty where none is. */
    OptionalInt firstAbout(int component) {
        Component part = recipe.components().get(component);
        int from = firstLine(recipe, component);
        int to = from + part.lines().size();
        return IntStream.rangeClosed(1, ofStep.size())
                .filter(step -> !of(step).isEmpty()
                        && 2
                                        * of(step).stream()
                                                .filter(line -> line >= from && line < to)
                                                .count()
                                >= of(step).size())
                .findFirst();
    }
}
