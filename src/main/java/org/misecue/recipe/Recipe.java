package org.misecue.recipe;

import java.util.List;
import org.misecue.notice.Note;

/**
 * A recipe as written: the promise to the viewer.
 *
 * @param title the dish
 * @param components in the order of the list; one with an empty name where the list has no headings
 * @param steps the method, numbered from 1
 * @param settings tin and yield stated outside the method; what a step states stands with the step
 * @param notes what was not understood or looks wrong, each with its line
 * @param source the file it was read from
 */
public record Recipe(
        String title,
        List<Component> components,
        List<Step> steps,
        List<Setting> settings,
        List<Note> notes,
        String source) {

    Recipe with(List<Note> more) {
        return new Recipe(title, components, steps, settings, more, source);
    }

    /** Every setting: those of the recipe, then those of each step. */
    public List<Setting> allSettings() {
        return java.util.stream.Stream.concat(
                        settings.stream(), steps.stream().flatMap(step -> step.settings().stream()))
                .toList();
    }

    /** Every ingredient line in recipe order. */
    public List<IngredientLine> lines() {
        return components.stream()
                .flatMap(component -> component.lines().stream())
                .toList();
    }

    /** Where {@link #lines} has the line that a step uses, from 0. */
    public int indexOf(Use use) {
        return firstLine(use.component()) + use.line();
    }

    /** Where {@link #lines} has the first line of a component, from 0. */
    public int firstLine(int component) {
        return components.subList(0, component).stream()
                .mapToInt(before -> before.lines().size())
                .sum();
    }
}
