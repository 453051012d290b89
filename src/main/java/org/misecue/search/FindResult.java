package org.misecue.search;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What was found.
 *
 * @param hits best first
 * @param suggestion the query with words that nobody said replaced by the nearest that somebody did; the hits are then
 *     for this
 * @param episodes the folders that were searched
 */
public record FindResult(String query, List<Hit> hits, Optional<String> suggestion, List<Path> episodes) {}
