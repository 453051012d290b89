package org.misecue.quantity;

import tech.units.indriya.function.RationalNumber;

/** Quantities from the plain columns of test tables: "1/3", "2.5", "45-50". */
final class Quantities {

    private Quantities() {}

    static Quantity of(String amount, String unitCode) {
        String[] ends = amount.split("-");
        return new Quantity(
                Amount.between(rational(ends[0]), rational(ends[ends.length - 1])),
                Unit.ofCode(unitCode).orElseThrow());
    }

    static RationalNumber rational(String text) {
        String[] parts = text.strip().split("/");
        return parts.length == 2 ? Rationals.of(parts[0]).divide(Rationals.of(parts[1])) : Rationals.of(parts[0]);
    }
}
