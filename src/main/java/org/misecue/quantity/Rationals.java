package org.misecue.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import tech.units.indriya.function.RationalNumber;

/** Small helpers around exact rationals, which every amount is made of. */
public final class Rationals {

    public static final RationalNumber ZERO = RationalNumber.ZERO;
    public static final RationalNumber ONE = RationalNumber.ONE;

    private Rationals() {}

    public static RationalNumber of(long whole) {
        return RationalNumber.of(whole, 1);
    }

    /** @throws ArithmeticException if the divisor is zero */
    public static RationalNumber of(long dividend, long divisor) {
        return RationalNumber.of(dividend, divisor);
    }

    /** An exact decimal such as {@code "28.349523125"}. */
    public static RationalNumber of(String decimal) {
        return of(new BigDecimal(decimal));
    }

    public static RationalNumber of(BigDecimal decimal) {
        BigInteger unscaled = decimal.unscaledValue();
        return decimal.scale() >= 0
                ? RationalNumber.of(unscaled, BigInteger.TEN.pow(decimal.scale()))
                : RationalNumber.of(unscaled.multiply(BigInteger.TEN.pow(-decimal.scale())), BigInteger.ONE);
    }

    /** Most units are those that their amounts are kept in. */
    static boolean isOne(RationalNumber value) {
        return value.getDividend().equals(BigInteger.ONE) && isWhole(value);
    }

    public static boolean isWhole(RationalNumber value) {
        return value.getDivisor().equals(BigInteger.ONE);
    }

    /** The largest whole number that is not above the value. */
    public static RationalNumber floor(RationalNumber value) {
        BigInteger[] parts = value.getDividend().divideAndRemainder(value.getDivisor());
        return RationalNumber.of(parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0], BigInteger.ONE);
    }

    /** Rounded to so many decimal places, none or more, half away from zero, trailing zeros kept off. */
    public static BigDecimal rounded(RationalNumber value, int places) {
        return plain(new BigDecimal(value.getDividend())
                .divide(new BigDecimal(value.getDivisor()), places, RoundingMode.HALF_UP));
    }

    /** As a decimal with at most twelve digits: for JSON and for reading, never for further sums. */
    public static BigDecimal decimal(RationalNumber value) {
        return plain(new BigDecimal(value.getDividend())
                .divide(new BigDecimal(value.getDivisor()), new MathContext(12, RoundingMode.HALF_UP)));
    }

    /** The nearest multiple of a step, half away from zero. */
    public static RationalNumber nearest(RationalNumber value, RationalNumber step) {
        RationalNumber steps = value.divide(step);
        BigDecimal whole =
                new BigDecimal(steps.getDividend()).divide(new BigDecimal(steps.getDivisor()), 0, RoundingMode.HALF_UP);
        return of(whole).multiply(step);
    }

    private static BigDecimal plain(BigDecimal value) {
        BigDecimal stripped = value.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}
