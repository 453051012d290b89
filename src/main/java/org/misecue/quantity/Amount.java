package org.misecue.quantity;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.function.RationalNumber;

/**
 * How much, without the unit: exact, a range, hedged, or not stated at all. Equality is of what is written, by value: ½
 * equals 0.5. A range of one value is not the exact value, so make ranges by {@link #between}; nor is a hedged amount
 * equal to the same without its hedge, so compare {@link #least} and {@link #most} where only the size counts.
 */
public sealed interface Amount {

    /** One value; below zero only for a temperature. */
    record Exact(RationalNumber value) implements Amount {

        /** Rational numbers are kept in lowest terms; their own comparison makes decimals of them first. */
        @Override
        public boolean equals(@Nullable Object other) {
            return other instanceof Exact exact
                    && value.getDividend().equals(exact.value.getDividend())
                    && value.getDivisor().equals(exact.value.getDivisor());
        }

        @Override
        public int hashCode() {
            return 31 * value.getDividend().hashCode() + value.getDivisor().hashCode();
        }
    }

    /** Between two values, both included; the lower comes first. */
    record Range(RationalNumber from, RationalNumber to) implements Amount {
        public Range {
            if (from.compareTo(to) > 0) {
                throw new IllegalArgumentException(
                        "the lower end of a range, " + from + ", is above its upper end, " + to);
            }
        }
    }

    /** A hedged amount: "about 70". The hedge is kept as written or said. */
    record Approximate(Amount about, String hedge) implements Amount {}

    /** No number at all: "some", "a splash". */
    record Unstated(String words) implements Amount {}

    static Amount of(RationalNumber value) {
        return new Exact(value);
    }

    static Amount of(long value) {
        return new Exact(Rationals.of(value));
    }

    /** The two ends in either order; one value where they are equal. */
    static Amount between(RationalNumber one, RationalNumber other) {
        int order = one.compareTo(other);
        if (order == 0) {
            return new Exact(one);
        }
        return order < 0 ? new Range(one, other) : new Range(other, one);
    }

    /** The value, or the lower end of the range; empty where nothing is stated. */
    default Optional<RationalNumber> least() {
        if (this instanceof Exact exact) {
            return Optional.of(exact.value());
        }
        if (this instanceof Range range) {
            return Optional.of(range.from());
        }
        if (this instanceof Approximate approximate) {
            return approximate.about().least();
        }
        return Optional.empty();
    }

    /** The value, or the upper end of the range; empty where nothing is stated. */
    default Optional<RationalNumber> most() {
        if (this instanceof Range range) {
            return Optional.of(range.to());
        }
        return this instanceof Approximate approximate ? approximate.about().most() : least();
    }

    default boolean hedged() {
        return this instanceof Approximate;
    }

    /** Every value times a factor, zero or more; what is not stated stays so. */
    default Amount times(RationalNumber factor) {
        return Rationals.isOne(factor) ? this : map(value -> value.multiply(factor));
    }

    /** Every value changed by a function, the ends of a range put in order; what is not stated stays so. */
    default Amount map(UnaryOperator<RationalNumber> change) {
        if (this instanceof Exact exact) {
            return new Exact(change.apply(exact.value()));
        }
        if (this instanceof Range range) {
            return between(change.apply(range.from()), change.apply(range.to()));
        }
        if (this instanceof Approximate approximate) {
            return new Approximate(approximate.about().map(change), approximate.hedge());
        }
        return this;
    }
}
