package org.misecue.spoken;

import java.util.Set;

/**
 * An ingredient named in {@code [start, end)} of the stream.
 *
 * @param lines the recipe's ingredient lines that it may mean, as indexes into {@code Recipe.lines()}; empty for an
 *     ingredient that the recipe does not have
 * @param name the words of the name as heard
 */
public record NameHit(int start, int end, Set<Integer> lines, String name) {

    public boolean inRecipe() {
        return !lines.isEmpty();
    }

    /** The same words, meaning other lines. */
    public NameHit meaning(Set<Integer> others) {
        return new NameHit(start, end, others, name);
    }
}
