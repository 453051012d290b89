package org.misecue.quantity;

import java.util.Optional;
import java.util.function.Function;

/** Amounts written in two measures: "1 lb 4 oz", "1 cup plus 2 tbsp", "1 cup minus 1 tbsp". */
final class Sums {

    private static final Shape PLUS = Shape.inAnyCase("\\h*(?:\\bplus\\b|\\band\\b|[+&])\\h*");
    private static final Shape MINUS = Shape.inAnyCase("\\h+(?:minus|less)\\h+");

    private Sums() {}

    /** Adds, or takes off, a second measure of the same dimension that follows at once; the sum is in the first unit. */
    static Quantity with(Cursor cursor, Quantity first, Function<Cursor, Optional<Quantity>> measure) {
        int start = cursor.at();
        boolean minus = cursor.skip(MINUS);
        boolean plus = minus || cursor.skip(PLUS);
        cursor.skipBlanks();
        Optional<Quantity> second = measure.apply(cursor)
                .filter(quantity -> quantity.dimension() == first.dimension())
                .filter(quantity -> plus || follows(first.unit(), quantity.unit()));
        if (second.isPresent()
                && first.amount() instanceof Amount.Exact one
                && second.get().amount() instanceof Amount.Exact) {
            Household household = first.unit() == Unit.CUP ? Household.US_CUSTOMARY : Household.METRIC;
            return second.get()
                    .in(first.unit(), household)
                    .amount()
                    .least()
                    .map(more ->
                            minus ? one.value().subtract(more) : one.value().add(more))
                    .filter(sum -> sum.signum() > 0)
                    .map(sum -> Quantity.of(sum, first.unit()))
                    .orElse(first);
        }
        cursor.backTo(start);
        return first;
    }

    /** Without a "plus" only pounds with ounces and hours with minutes are one amount. */
    private static boolean follows(Unit first, Unit second) {
        return (first == Unit.POUND && second == Unit.OUNCE) || (first == Unit.HOUR && second == Unit.MINUTE);
    }
}
