package org.misecue.publish;

import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;

/** Amounts as they are published. */
final class Amounts {

    private Amounts() {}

    static String text(Quantity quantity) {
        return QuantityWriter.text(quantity);
    }

    static String plural(String packing) {
        if (packing.equals("leaf")) {
            return "leaves";
        }
        return packing.endsWith("ch") || packing.endsWith("x") ? packing + "es" : packing + "s";
    }
}
