package org.misecue.spoken;

import java.util.Optional;
import java.util.function.IntFunction;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/** "twenty five minutes to half an hour": a range whose ends both have their unit. */
final class UnitRanges {

    private final WordStream words;

    UnitRanges(WordStream words) {
        this.words = words;
    }

    /**
     * The range that begins with an amount, or the amount alone.
     *
     * @param ends the amount that begins at an index
     */
    SpokenQuantity from(SpokenQuantity low, IntFunction<Optional<SpokenQuantity>> ends) {
        String next = words.text(low.end());
        boolean joined = next.equals("to") || next.equals("or");
        if (!joined
                || low.unit().isEmpty()
                || !(low.amount() instanceof Amount.Exact)
                || words.wall(low.end())
                || !words.on(Mechanism.RANGES)) {
            return low;
        }
        return ends.apply(low.end() + 1).flatMap(high -> spanning(low, high)).orElse(low);
    }

    private static Optional<SpokenQuantity> spanning(SpokenQuantity low, SpokenQuantity high) {
        Unit unit = low.unit().orElseThrow();
        boolean alike = high.unit().map(Unit::dimension).equals(Optional.of(unit.dimension()))
                && unit.dimension() == Dimension.DURATION
                && high.amount() instanceof Amount.Exact;
        if (!alike) {
            return Optional.empty();
        }
        Quantity top = new Quantity(high.amount(), high.unit().orElseThrow()).in(unit, Household.METRIC);
        RationalNumber from = low.amount().least().orElse(Rationals.ZERO);
        RationalNumber to = top.amount().least().orElse(Rationals.ZERO);
        return from.compareTo(to) < 0
                ? Optional.of(SpokenQuantity.measured(low.start(), high.end(), Amount.between(from, to), unit))
                : Optional.empty();
    }
}
