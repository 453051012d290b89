package org.misecue.worktop;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.misecue.search.Shelved;

/**
 * What an archive's index holds after it was brought up to date.
 *
 * @param episodes by name
 * @param changed those that were indexed now
 * @param gone those that were forgotten now
 */
public record Shelving(Map<String, Shelved> episodes, Set<String> changed, Set<String> gone) {

    /** What is wrong with episodes, in the order of their names. */
    public List<String> notes() {
        return notes(episode -> true);
    }

    /** What is wrong with those that were indexed now. */
    public List<String> newNotes() {
        return notes(changed::contains);
    }

    private List<String> notes(Predicate<String> which) {
        return episodes.entrySet().stream()
                .filter(episode -> which.test(episode.getKey()))
                .flatMap(episode -> episode.getValue().notes().stream())
                .toList();
    }
}
