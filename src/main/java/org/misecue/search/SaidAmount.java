package org.misecue.search;

import java.util.Set;

/**
 * An amount that is said in a passage.
 *
 * @param key its value, see {@link AmountKeys}
 * @param from its words are {@code [from, to)} of the passage's own; more than those where it goes on in the next cue
 * @param of the names of what it is an amount of, where that is known; they need not be said here
 */
public record SaidAmount(String key, int from, int to, Set<String> of) {

    /** The same without what it is of. */
    SaidAmount alone() {
        return new SaidAmount(key, from, to);
    }

    /** Of who knows what. */
    public SaidAmount(String key, int from, int to) {
        this(key, from, to, Set.of());
    }
}
