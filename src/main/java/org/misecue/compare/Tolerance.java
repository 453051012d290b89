package org.misecue.compare;

import java.math.BigDecimal;
import java.util.Optional;
import org.misecue.compare.Trail.Held;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/** Says against which figure an amount was held and how far off it might be: the rules of {@link Judge} in words. */
final class Tolerance {

    private static final RationalNumber HUNDRED = Rationals.of(100);

    private Tolerance() {}

    static String sentence(Held held, Household household) {
        return QuantityWriter.text(held.said()) + " is held against the written " + QuantityWriter.text(held.figure())
                + gap(held, household) + ": " + it(held.verdict()) + ". " + allowed(held.figure(), held.said()) + ".";
    }

    private static String it(Verdict verdict) {
        return verdict == Verdict.APPROXIMATE ? "it is approximate" : "it " + verdict.code();
    }

    private static String allowed(Quantity written, Quantity said) {
        if (written.dimension() != said.dimension()) {
            return "Weight and volume meet by what a spoon or cup of it usually weighs, and up to 10 % off is"
                    + " approximate";
        }
        if (said.amount().hedged()) {
            return "The speaker hedges, so that nothing agrees and up to 10 % off is approximate";
        }
        return Hearing.sameSystem(written.unit(), said.unit())
                ? "In the same measures up to 2 % off is equal"
                : "In another system of measures up to 10 % off is approximate";
    }

    /** ", 14 % more" where the two can be subtracted and are not the same. */
    private static String gap(Held held, Household household) {
        if (held.figure().dimension() != held.said().dimension()) {
            return "";
        }
        Optional<RationalNumber> written = held.figure().leastInBase(household);
        Optional<RationalNumber> said = held.said().leastInBase(household);
        if (written.isEmpty() || said.isEmpty() || written.get().signum() <= 0) {
            return "";
        }
        RationalNumber off = said.get().subtract(written.get()).divide(written.get());
        BigDecimal percent = Rationals.rounded(off.abs().multiply(HUNDRED), 0);
        boolean range = held.figure()
                .mostInBase(household)
                .filter(most -> !most.equals(written.get()))
                .isPresent();
        return range || percent.signum() == 0
                ? ""
                : ", " + percent.toPlainString() + " % " + (off.signum() > 0 ? "more" : "less");
    }
}
