package org.misecue.desk.begin;

import java.util.List;

/**
 * What one of the three people has for their job, and what is missing for it.
 *
 * @param who "Presenter"
 * @param has what can be done with what there is; empty if nothing
 * @param lacks what would help, and for what; empty if nothing
 */
public record Job(String who, String has, String lacks) {

    /**
     * @param recipe whether it can be read
     * @param narrations how many can be read
     */
    static List<Job> all(boolean recipe, int narrations, int films) {
        if (!recipe) {
            String lacks = "A recipe that can be read: everything begins with it.";
            return List.of(
                    new Job("Presenter", "", lacks), new Job("Editor", "", lacks), new Job("Producer", "", lacks));
        }
        boolean spoken = narrations > 0;
        boolean filmed = films > 0;
        return List.of(
                new Job("Presenter", "Bowls, shots and the order of the day.", ""),
                new Job(
                        "Editor",
                        spoken ? "Every word leads to its moment" + (filmed ? ", with stills and clips." : ".") : "",
                        both(
                                spoken ? "" : "A narration: without one no word leads to a moment.",
                                filmed ? "" : "A film: for stills and clips of the moments.")),
                new Job(
                        "Producer",
                        "The text for the description"
                                + (spoken ? ", with chapters; what was said against what is written" : "")
                                + (filmed ? "; what films show in writing." : "."),
                        both(
                                spoken
                                        ? ""
                                        : "A narration: to hold what was said against what is written, and for chapters.",
                                filmed ? "" : "A film: to hold what it shows in writing against the recipe.")));
    }

    private static String both(String one, String other) {
        return (one + " " + other).strip();
    }
}
