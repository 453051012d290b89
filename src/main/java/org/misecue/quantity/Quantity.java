package org.misecue.quantity;

import java.util.Optional;
import tech.units.indriya.function.RationalNumber;

/** An amount with its unit. Equality is of value and unit: {@code 1 kg} and {@code 1000 g} are the same size only by {@link #sameSize}. */
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
                    .formatted(this, dimension(), other.code(), other.dimension()));
        }
        return new Quantity(convert(amount, other, household), other);
    }

    private Amount convert(Amount from, Unit other, Household household) {
        if (from instanceof Amount.Exact exact) {
            return Amount.of(converted(exact.value(), other, household));
        }
        if (from instanceof Amount.Range range) {
            return Amount.between(converted(range.from(), other, household), converted(range.to(), other, household));
        }
        if (from instanceof Amount.Approximate about) {
            return new Amount.Approximate(convert(about.about(), other, household), about.hedge());
        }
        return from;
    }

    private RationalNumber converted(RationalNumber value, Unit other, Household household) {
        return other.fromBase(unit.toBase(value, household), household);
    }

    /** Whether both ends are equal after exact conversion. */
    public boolean sameSize(Quantity other, Household household) {
        return dimension() == other.dimension()
                && leastInBase(household).equals(other.leastInBase(household))
                && mostInBase(household).equals(other.mostInBase(household));
    }
}
