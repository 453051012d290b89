package org.misecue.publish;

import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;

/** Amounts as they are published. */
final class Amounts {

    private Amounts() {}

    static String text(Quantity quantity) {
        return QuantityWriter.text(quantity);
    }
}
