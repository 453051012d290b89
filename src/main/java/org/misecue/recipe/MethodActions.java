package org.misecue.recipe;

import java.util.List;

/** Where a step's text tells what is done, for those who need the order of its actions and not only their names. */
public final class MethodActions {

    /** A technique's key, with the place of its words in the text: {@code [start, end)}. */
    public record Sighted(String technique, int start, int end) {}

    private MethodActions() {}

    /** The keys of all techniques that steps may list. */
    public static List<String> techniques() {
        return Techniques.standard().listed();
    }

    /** Every place that tells a technique that steps list, in the order of the text; one may come more than once. */
    public static List<Sighted> in(String step) {
        return Techniques.standard().in(Wording.of(step)).list().stream()
                .filter(sighting -> sighting.technique().listed())
                .map(sighting -> new Sighted(sighting.technique().key(), sighting.start(), sighting.end()))
                .toList();
    }
}
