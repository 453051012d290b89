package org.misecue.footage;

import java.util.List;
import java.util.stream.Stream;

/**
 * Which films ran at the same time.
 *
 * @param pairs each two films once
 */
public record Together(List<Pair> pairs) {

    /** Nothing was asked. */
    public static final Together UNASKED = new Together(List.of());

    /**
     * Two films.
     *
     * @param first relative to the episode
     * @param second relative to the episode
     */
    public record Pair(String first, String second, Beside beside) {

        private Pair turned() {
            return new Pair(second, first, beside.turned());
        }
    }

    /** A film beside each other one, that being the first of the two. */
    List<Pair> of(String film) {
        return pairs.stream()
                .flatMap(pair -> pair.second().equals(film)
                        ? Stream.of(pair)
                        : pair.first().equals(film) ? Stream.of(pair.turned()) : Stream.empty())
                .toList();
    }
}
