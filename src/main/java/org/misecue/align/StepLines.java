package org.misecue.align;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.recipe.Component;
import org.misecue.recipe.Recipe;

/** Which ingredient lines each step uses, as indexes into {@code Recipe.lines()}. */
final class StepLines {

    private final Recipe recipe;
    private final List<Set<Integer>> ofStep;

    StepLines(Recipe recipe) {
        this.recipe = recipe;
        this.ofStep = recipe.steps().stream()
                .map(step ->
                        Set.copyOf(step.uses().stream().map(recipe::indexOf).toList()))
                .toList();
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
        int from = recipe.firstLine(component);
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
