package org.misecue.offers;

import java.util.Optional;
import java.util.Set;
import org.misecue.spoken.SpokenQuantity;

/**
 * A food with its amount, in {@code [start, end)} of the stream: "two hundred of yoghurt".
 *
 * @param amount empty where none is said right before it
 * @param nameStart where its name begins, adjectives included
 * @param lines the recipe's lines that it may be; empty for another food
 * @param known whether the pantry or the recipe knows the name
 */
record Portion(int start, int end, Optional<SpokenQuantity> amount, int nameStart, Set<Integer> lines, boolean known) {

    boolean inRecipe() {
        return !lines.isEmpty();
    }

    Portion of(Optional<SpokenQuantity> other) {
        return new Portion(start, end, other, nameStart, lines, known);
    }
}
