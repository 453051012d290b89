package org.misecue.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import tech.units.indriya.function.RationalNumber;

/**
 * Spoons as a person measures them out: "1 cup + 3 tbsp" for nineteen tablespoons, "2 tbsp + 1 tsp" for seven teaspoons,
 * for nobody counts so far. Everything else is written by {@link QuantityWriter}.
 */
public final class CupsAndSpoons {

    private static final RationalNumber QUARTER = Rationals.of(1, 4);
    private static final RationalNumber HALF = Rationals.of(1, 2);
    private static final RationalNumber MANY_TABLESPOONS = Rationals.of(8);
    private static final RationalNumber MANY_TEASPOONS = Rationals.of(3);

    private CupsAndSpoons() {}

    /** @param household whose cups and spoons they are */
    public static String text(Quantity quantity, Household household) {
        List<Quantity> parts = parts(quantity, household);
        if (parts.size() == 1 && parts.get(0).equals(quantity)) {
            return QuantityWriter.text(quantity);
        }
        String hedge = quantity.amount() instanceof Amount.Approximate about
                ? (about.hedge().isBlank() ? "about" : about.hedge()) + " "
                : "";
        return hedge + parts.stream().map(QuantityWriter::text).collect(Collectors.joining(" + "));
    }

    /** The measures that are filled one after the other, exact; the quantity itself where it is measured as it is. */
    public static List<Quantity> parts(Quantity quantity, Household household) {
        RationalNumber value = quantity.amount().most().orElse(Rationals.ZERO);
        boolean range = !quantity.amount().least().filter(value::equals).isPresent();
        if (!range && quantity.unit() == Unit.TABLESPOON && value.compareTo(MANY_TABLESPOONS) > 0) {
            return inTwo(quantity, Unit.CUP, QUARTER, HALF, household);
        }
        if (!range && quantity.unit() == Unit.TEASPOON && value.compareTo(MANY_TEASPOONS) > 0) {
            return inTwo(quantity, Unit.TABLESPOON, Rationals.ONE, Rationals.of(1, 8), household);
        }
        return List.of(quantity);
    }

    /** So many steps of the larger measure as go in, and the rest in the unit itself. */
    private static List<Quantity> inTwo(
            Quantity quantity, Unit larger, RationalNumber step, RationalNumber fine, Household household) {
        Unit unit = quantity.unit();
        RationalNumber base = unit.toBase(quantity.amount().most().orElseThrow(), household);
        RationalNumber large =
                Rationals.floor(larger.fromBase(base, household).divide(step)).multiply(step);
        RationalNumber left =
                Rationals.nearest(unit.fromBase(base.subtract(larger.toBase(large, household)), household), fine);
        List<Quantity> parts = new ArrayList<>();
        if (large.signum() > 0) {
            parts.add(Quantity.of(large, larger));
        }
        if (left.signum() > 0) {
            parts.add(Quantity.of(left, unit));
        }
        return parts;
    }
}
