package org.misecue.prep;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One vessel on the tray.
 *
 * @param number from 1, the same in every take
 * @param take from 1; 0 for what is made earlier
 * @param name in plain words: "caster sugar", "the dry mix", "half of the milk"
 * @param component the part of the dish; empty where the recipe has no parts
 * @param step the step that uses it first; 0 where no step names it
 * @param laterSteps other steps that go on using it
 * @param contents one ingredient, or the several of a dry mix
 * @param vessel what to put it in
 * @param allergens what the contents carry
 * @param reading what the scale should show besides the empty vessel; empty where that is unknown
 */
public record Bowl(
        int number,
        int take,
        String name,
        String component,
        int step,
        List<Integer> laterSteps,
        List<Content> contents,
        Vessel vessel,
        Carries allergens,
        Optional<Reading> reading) {

    /** The same bowl in another set. */
    Bowl inSet(int set) {
        return new Bowl(number, set, name, component, step, laterSteps, contents, vessel, allergens, reading);
    }

    /** What is done to the contents beforehand: "softened", "currants: soaked"; empty for nothing. */
    public String preparation() {
        if (contents.size() == 1) {
            return contents.get(0).preparation();
        }
        return contents.stream()
                .filter(content -> !content.preparation().isEmpty())
                .map(content -> content.ingredient() + ": " + content.preparation())
                .collect(Collectors.joining("; "));
    }

    /** "step 3", "steps 3 and 5", or that no step names it. */
    public String when() {
        if (step == 0) {
            return "no step names it";
        }
        return Wording.steps(Stream.concat(Stream.of(step), laterSteps.stream()).toList());
    }
}
