package org.misecue.compare;

import java.util.Optional;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * Holds one said amount against one written amount. Equal within 2 % in one family of measures agrees; hedged, or in
 * another family, or by the ordinary density of the kitchen, within 10 % is approximate; all else differs.
 */
final class Judge {

    private static final RationalNumber EQUAL = Rationals.of(2, 100);
    private static final RationalNumber CLOSE = Rationals.of(10, 100);

    private final Household household;

    Judge(Household household) {
        this.household = household;
    }

    Verdict of(Quantity written, Quantity said, Optional<Ingredient> ingredient) {
        if (written.dimension() == said.dimension()) {
            return sameDimension(written, said);
        }
        Optional<RationalNumber> a = gramsOf(written, ingredient);
        Optional<RationalNumber> b = gramsOf(said, ingredient);
        boolean close = a.isPresent()
                && b.isPresent()
                && distance(a.get(), a.get(), b.get(), b.get()).compareTo(CLOSE) <= 0;
        return close ? Verdict.APPROXIMATE : Verdict.DIFFERS;
    }

    private Verdict sameDimension(Quantity written, Quantity said) {
        Optional<RationalNumber> least = written.leastInBase(household);
        Optional<RationalNumber> saidLeast = said.leastInBase(household);
        if (least.isEmpty() || saidLeast.isEmpty()) {
            return Verdict.DIFFERS;
        }
        RationalNumber most = written.mostInBase(household).orElse(least.get());
        RationalNumber saidMost = said.mostInBase(household).orElse(saidLeast.get());
        boolean plain = Hearing.sameSystem(written.unit(), said.unit())
                && !said.amount().hedged();
        if (plain && inside(least.get(), most, saidLeast.get(), saidMost)) {
            return Verdict.AGREES;
        }
        if (plain && said.unit() == Unit.TABLESPOON && isAustralian(written, said)) {
            return Verdict.AGREES;
        }
        RationalNumber gap = distance(least.get(), most, saidLeast.get(), saidMost);
        RationalNumber allowed = plain ? Rationals.ZERO : CLOSE;
        return gap.compareTo(allowed) <= 0 ? Verdict.APPROXIMATE : Verdict.DIFFERS;
    }

    /** A speaker's own tablespoon of 20 ml counts as hers, where the list has millilitres. */
    private static boolean isAustralian(Quantity written, Quantity said) {
        if (written.unit() != Unit.MILLILITRE && written.unit() != Unit.TEASPOON) {
            return false;
        }
        return said.leastInBase(Household.AUSTRALIAN).equals(written.leastInBase(Household.AUSTRALIAN))
                && said.mostInBase(Household.AUSTRALIAN).equals(written.mostInBase(Household.AUSTRALIAN));
    }

    private static boolean inside(RationalNumber least, RationalNumber most, RationalNumber from, RationalNumber to) {
        RationalNumber low = least.subtract(least.multiply(EQUAL));
        RationalNumber high = most.add(most.multiply(EQUAL));
        return from.compareTo(low) >= 0 && to.compareTo(high) <= 0;
    }

    /** The gap between two stretches as a share of the written one's nearer end; zero where they touch. */
    private static RationalNumber distance(
            RationalNumber least, RationalNumber most, RationalNumber from, RationalNumber to) {
        if (to.compareTo(least) < 0) {
            return share(least.subtract(to), least);
        }
        return from.compareTo(most) > 0 ? share(from.subtract(most), most) : Rationals.ZERO;
    }

    private static RationalNumber share(RationalNumber gap, RationalNumber of) {
        return of.signum() == 0 ? Rationals.ONE : gap.divide(of.signum() < 0 ? of.negate() : of);
    }

    /** The weight, by itself or through the pantry's weight of a cup, spoon or piece. */
    private Optional<RationalNumber> gramsOf(Quantity quantity, Optional<Ingredient> ingredient) {
        if (quantity.dimension() == Dimension.MASS) {
            return quantity.leastInBase(household);
        }
        if (quantity.dimension() == Dimension.VOLUME) {
            return ingredient.flatMap(Weighing::gramsPerMillilitre).flatMap(density -> quantity.leastInBase(household)
                    .map(density::multiply));
        }
        return Optional.empty();
    }
}
