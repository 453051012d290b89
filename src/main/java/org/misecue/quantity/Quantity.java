package org.misecue.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import tech.units.indriya.function.RationalNumber;

/**
 * An amount with its unit. Two quantities are equal if they are written alike, in the same unit and with the same hedge
 * ({@code 0.5 tsp} equals {@code ½ tsp}); {@code 1 kg} and {@code 1000 g} are the same size, which {@link #sameSize}
 * asks, but not equal.
 */
public record Quantity(Amount amount, Unit unit) {

    public static Quantity of(long value, Unit unit) {
        return new Quantity(Amount.of(value), unit);
    }

    public static Quantity of(RationalNumber value, Unit unit) {
        return new Quantity(Amount.of(value), unit);
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    public Quantity times(RationalNumber factor) {
        return new Quantity(amount.times(factor), unit);
    }

    /** The lower end in the base unit of the dimension (g, ml, each, °C, min, cm). */
    public Optional<RationalNumber> leastInBase(Household household) {
        return amount.least().map(value -> unit.toBase(value, household));
    }

    /** The upper end in the base unit of the dimension. */
    public Optional<RationalNumber> mostInBase(Household household) {
        return amount.most().map(value -> unit.toBase(value, household));
    }

    /**
     * The same quantity in another unit of its dimension, exact.
     *
     * @throws IllegalArgumentException if the dimensions differ
     */
    public Quantity in(Unit other, Household household) {
        if (other.dimension() != dimension()) {
            throw new IllegalArgumentException("%s is a %s and cannot become %s, a %s"
                    .formatted(QuantityWriter.text(this), named(dimension()), other.code(), named(other.dimension())));
        }
        return new Quantity(amount.map(value -> other.fromBase(unit.toBase(value, household), household)), other);
    }

    /** Every value changed by a function; the unit stays. */
    public Quantity map(UnaryOperator<RationalNumber> change) {
        return new Quantity(amount.map(change), unit);
    }

    private static String named(Dimension dimension) {
        return dimension.name().toLowerCase(Locale.ROOT);
    }

    /** Whether both ends are equal after exact conversion; hedges do not count, and two that state nothing are the same. */
    public boolean sameSize(Quantity other, Household household) {
        return dimension() == other.dimension()
                && leastInBase(household).equals(other.leastInBase(household))
                && mostInBase(household).equals(other.mostInBase(household));
    }
}
