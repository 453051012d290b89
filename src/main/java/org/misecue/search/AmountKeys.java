package org.misecue.search;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import tech.units.indriya.function.RationalNumber;

/**
 * The value of an amount, exactly and in the base unit of what it measures, as it is kept in the index: half a kilo and
 * 500 g have the same. Hedges do not count. Spoons and cups are millilitres, in the kitchen's own sizes.
 */
public final class AmountKeys {

    private AmountKeys() {}

    /** What somebody may look for who means this amount as it was said: a range is also found by its ends. */
    public static Set<String> said(Quantity quantity) {
        Set<String> keys = new LinkedHashSet<>(asked(quantity).stream().toList());
        if (quantity.amount() instanceof Amount.Range range) {
            keys.addAll(said(Quantity.of(range.from(), quantity.unit())));
            keys.addAll(said(Quantity.of(range.to(), quantity.unit())));
        }
        return keys;
    }

    /** Nothing where no number is stated. */
    static Optional<String> asked(Quantity quantity) {
        Optional<RationalNumber> most = quantity.mostInBase(Household.METRIC);
        return quantity.leastInBase(Household.METRIC)
                .map(least ->
                        quantity.dimension() + " " + least + (most.equals(Optional.of(least)) ? "" : " " + most.get()));
    }
}
