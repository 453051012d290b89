package org.misecue.recipe;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * What earlier shares left of each line, so that "the rest" gets its figure. Known only while every share of the line
 * had one; a use without a share may have taken all or some, and then nobody can tell.
 */
final class Leftovers {

    private final Map<LineRef, Quantity> left = new HashMap<>();
    private final Map<LineRef, Quantity> aside = new HashMap<>();
    private final Set<LineRef> unknown = new HashSet<>();

    /** The share with its figure where what was taken before tells it; what is taken is remembered. */
    Share take(LineRef ref, Share share) {
        if (share.words().equals(Use.RESERVED)) {
            return share.with(Optional.ofNullable(aside.get(ref))); // it was taken when it was put by
        }
        Share known = share.part().isEmpty() && share.isRest() ? share.with(rest(ref, share)) : share;
        Optional<Quantity> before =
                Optional.ofNullable(left.get(ref)).or(() -> ref.line().quantity());
        Optional<Quantity> now = known.part().flatMap(part -> before.flatMap(whole -> minus(whole, part)));
        if (now.isPresent() && !unknown.contains(ref)) {
            left.put(ref, now.get());
        } else {
            unknown.add(ref);
        }
        if (share.words().equals(Use.SET_ASIDE)) {
            known.part().ifPresent(part -> aside.put(ref, part));
        }
        return known;
    }

    /** Whether a part of the line was taken and another is known to be left. */
    boolean hasSome(LineRef ref) {
        return !unknown.contains(ref)
                && Optional.ofNullable(left.get(ref))
                        .flatMap(Leftovers::exact)
                        .filter(value -> value.signum() > 0)
                        .isPresent();
    }

    private Optional<Quantity> rest(LineRef ref, Share share) {
        return unknown.contains(ref)
                ? Optional.empty()
                : Optional.ofNullable(left.get(ref))
                        .filter(quantity -> exact(quantity)
                                .filter(value -> value.signum() > 0)
                                .isPresent())
                        .map(quantity -> quantity.times(share.ofTheRest()));
    }

    /** What remains, in the unit of the whole. Only where no household's spoon has to be known: equal units, or weights. */
    static Optional<Quantity> minus(Quantity whole, Quantity part) {
        boolean comparable = whole.unit() == part.unit()
                || (whole.dimension() == Dimension.MASS && part.dimension() == Dimension.MASS)
                || (isMetric(whole.unit()) && isMetric(part.unit()));
        if (!comparable) {
            return Optional.empty();
        }
        Optional<RationalNumber> all = exact(whole);
        Optional<RationalNumber> taken = exact(part.in(whole.unit(), Household.METRIC));
        return all.flatMap(value -> taken.map(value::subtract))
                .filter(value -> value.signum() >= 0)
                .map(value -> Quantity.of(value, whole.unit()));
    }

    private static boolean isMetric(Unit unit) {
        return unit == Unit.MILLILITRE || unit == Unit.LITRE;
    }

    private static Optional<RationalNumber> exact(Quantity quantity) {
        return quantity.amount() instanceof Amount.Exact exact ? Optional.of(exact.value()) : Optional.empty();
    }
}
