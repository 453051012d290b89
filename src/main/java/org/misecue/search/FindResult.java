package org.misecue.search;

import java.util.List;
import java.util.Optional;

/**
 * What was found.
 *
 * @param hits best first
 * @param suggestion the query with words that nobody said replaced by the nearest that somebody did; the hits are then
 *     for this
 * @param archive whether a whole archive was searched, so that each hit should be shown with its episode
 * @param caution what to mind, in a sentence
 */
public record FindResult(
        String query, List<Hit> hits, Optional<String> suggestion, boolean archive, Optional<String> caution) {

    /** Without anything to mind. */
    public FindResult(String query, List<Hit> hits, Optional<String> suggestion, boolean archive) {
        this(query, hits, suggestion, archive, Optional.empty());
    }
}
