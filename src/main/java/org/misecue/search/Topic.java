package org.misecue.search;

/**
 * What a passage is about, by which it can be found without a word of it.
 *
 * @param name as it is called, in one of its names or in several
 */
public record Topic(Kind kind, String name) {

    public enum Kind {
        INGREDIENT,
        /** Carried by nature, or by some makes, so that a label must be read. */
        ALLERGEN
    }
}
