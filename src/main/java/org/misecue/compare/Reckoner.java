package org.misecue.compare;

import java.util.Optional;
import org.misecue.pantry.Ingredient;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** Sums of the amounts of one ingredient, and whether two of them are the same. */
final class Reckoner {

    private static final RationalNumber SAME = Rationals.of(2, 100);

    /** Parts that are more than the whole by this are not its parts. */
    private static final double BEYOND = 1.15;

    private static final double NEAR_IN_SIZE = 1.6;

    private final Household household;
    private final Optional<Ingredient> ingredient;

    Reckoner(Household household, Optional<Ingredient> ingredient) {
        this.household = household;
        this.ingredient = ingredient;
    }

    boolean same(Quantity one, Quantity other) {
        if (one.dimension() != other.dimension()
                || one.unit().system() != other.unit().system()) {
            return new Judge(household).of(one, other, ingredient) != Verdict.DIFFERS;
        }
        Optional<RationalNumber> a = one.leastInBase(household);
        Optional<RationalNumber> b = other.leastInBase(household);
        if (a.isEmpty() || b.isEmpty()) {
            return a.equals(b);
        }
        RationalNumber gap = a.get().subtract(b.get()).abs();
        return gap.compareTo(a.get().abs().multiply(SAME)) <= 0
                && one.mostInBase(household).isPresent()
                        == other.mostInBase(household).isPresent();
    }

    boolean nearInSize(Quantity one, Quantity other) {
        double a = base(one);
        double b = base(other);
        return one.dimension() == other.dimension() && a > 0 && b > 0 && Math.max(a / b, b / a) <= NEAR_IN_SIZE;
    }

    /** Whether parts come to more than the whole. */
    boolean isBeyond(Quantity parts, Quantity whole) {
        return parts.dimension() == whole.dimension() && base(parts) > BEYOND * base(whole);
    }

    private double base(Quantity quantity) {
        return quantity.leastInBase(household).map(RationalNumber::doubleValue).orElse(0.0);
    }

    /** The sum in the first one's unit; empty where the dimensions differ. */
    Optional<Quantity> sum(Quantity one, Quantity other) {
        if (one.dimension() != other.dimension()) {
            return Optional.empty();
        }
        Quantity converted = other.in(one.unit(), household);
        Optional<RationalNumber> least =
                add(one.amount().least(), converted.amount().least());
        Optional<RationalNumber> most =
                add(one.amount().most(), converted.amount().most());
        if (least.isEmpty() || most.isEmpty()) {
            return Optional.empty();
        }
        Amount total = Amount.between(least.get(), most.get());
        boolean hedged = one.amount().hedged() || converted.amount().hedged();
        return Optional.of(new Quantity(hedged ? new Amount.Approximate(total, "in parts") : total, one.unit()));
    }

    private static Optional<RationalNumber> add(Optional<RationalNumber> one, Optional<RationalNumber> other) {
        return one.flatMap(a -> other.map(a::add));
    }
}
