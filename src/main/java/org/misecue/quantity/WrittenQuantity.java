package org.misecue.quantity;

import java.util.Optional;
import tech.units.indriya.function.RationalNumber;

/**
 * An amount as it was found written at the start of a text.
 *
 * @param quantity how much in all: 800 g for "2 x 400 g tins"
 * @param alternative the same amount in another measure, where one is written beside it
 * @param packing what is counted, in the singular: "tin", "sachet", "clove"; empty for a plain measure
 * @param count how many of the packing, where they are counted
 * @param end where the rest of the text begins, after any "of"
 */
public record WrittenQuantity(
        Quantity quantity, Optional<Quantity> alternative, String packing, Optional<RationalNumber> count, int end) {

    /** Whether packs are counted that are full of what they are named with, such as tins, and their content is not told yet. */
    public boolean isPack() {
        return quantity.unit() == Unit.EACH && Packings.holds(packing);
    }
}
