package org.misecue.compare;

import java.util.List;
import org.misecue.quantity.Quantity;
import org.misecue.spoken.SpokenQuantity;

/**
 * An amount of a line of which amounts were said before.
 *
 * @param quantity what was said, with the unit that was left out
 * @param own the mentions of the same line before this one, at least one
 */
record Further(SpokenQuantity said, Quantity quantity, List<Mention> own) {

    Mention last() {
        return own.get(own.size() - 1);
    }

    int start() {
        return said.start();
    }

    int end() {
        return said.end();
    }

    /** How many words lie between it and the one before it. */
    int distance() {
        return said.start() - last().end();
    }

    /** Whether another amount was said of the line before. */
    boolean repeats(SpokenQuantity other) {
        return isSaid(other, own);
    }

    /** Whether the number of an amount is that of a mention before it. */
    static boolean isSaid(SpokenQuantity said, List<Mention> own) {
        return own.stream()
                .anyMatch(mention -> mention.end() <= said.start()
                        && mention.quantity()
                                .amount()
                                .least()
                                .equals(said.amount().least()));
    }
}
