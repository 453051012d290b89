package org.misecue.spoken;

import java.util.Optional;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * An amount heard in {@code [start, end)} of the stream, before anyone knows what it is an amount of.
 *
 * @param amount the number, hedged where the speaker hedges
 * @param unit the unit said; empty for a bare number
 * @param manner how it was said
 * @param aside why it measures nothing that matters here; empty where it may
 */
public record SpokenQuantity(
        int start, int end, Amount amount, Optional<Unit> unit, Manner manner, Optional<Aside> aside) {

    /** How an amount was put. */
    public enum Manner {
        /** A number with its unit: "75 grams", "a teaspoon". */
        MEASURED,
        /** A number and no unit: "three of them", "a hundred and fifty". */
        BARE,
        /** A number of degrees, or one that follows "gas" or "fan": an oven's. */
        HEAT,
        /** Spoons of no stated size. */
        SPOONS,
        /** Tins, packets, jars: as sold. */
        PACKED,
        /** A share of something: "half of it". */
        SHARE,
        /** A percentage; the amount is its share of one. */
        PERCENT
    }

    /** With its unit; one of heat is an oven's. */
    static SpokenQuantity measured(int start, int end, Amount amount, Unit unit) {
        Manner manner = unit.dimension() == Dimension.TEMPERATURE ? Manner.HEAT : Manner.MEASURED;
        return new SpokenQuantity(start, end, amount, Optional.of(unit), manner, Optional.empty());
    }

    /** Without a unit. */
    static SpokenQuantity of(int start, int end, Amount amount, Manner manner) {
        return new SpokenQuantity(start, end, amount, Optional.empty(), manner, Optional.empty());
    }

    public boolean isAside() {
        return aside.isPresent();
    }

    /** Whether the number heard, at its least, is the given one or more; false where none was given ("some"). */
    public boolean isAtLeast(RationalNumber number) {
        return amount.least().filter(value -> value.compareTo(number) >= 0).isPresent();
    }

    /** Whether the number heard, at its least, is smaller than the given one; false where none was given ("some"). */
    public boolean isBelow(RationalNumber number) {
        return amount.least().filter(value -> value.compareTo(number) < 0).isPresent();
    }

    public Optional<Quantity> quantity() {
        return unit.map(known -> new Quantity(amount, known));
    }

    public SpokenQuantity with(Amount other) {
        return new SpokenQuantity(start, end, other, unit, manner, aside);
    }

    public boolean isAside(Aside.Kind kind) {
        return aside.filter(found -> found.kind() == kind).isPresent();
    }

    public SpokenQuantity asideBecause(Aside reason) {
        return new SpokenQuantity(start, end, amount, unit, manner, Optional.of(reason));
    }
}
