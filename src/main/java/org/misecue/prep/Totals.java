package org.misecue.prep;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.scale.WeighedLine;
import tech.units.indriya.function.RationalNumber;

/** Adds lines of one ingredient and rounds up as one buys: never less than the bowls need. */
record Totals(Household household) {

    private static final RationalNumber FIFTY = Rationals.of(50);
    private static final RationalNumber FIVE_HUNDRED = Rationals.of(500);

    /**
     * One sum where all lines measure alike or all have a weight; otherwise one sum for each way of measuring. Ranges
     * count with their upper end.
     */
    List<Quantity> of(List<WeighedLine> lines) {
        Map<Dimension, List<WeighedLine>> byDimension = new EnumMap<>(Dimension.class);
        for (WeighedLine line : lines) {
            byDimension.merge(quantity(line).dimension(), List.of(line), Totals::joined);
        }
        boolean mixed = byDimension.size() > 1;
        if (mixed && lines.stream().allMatch(line -> line.grams().isPresent())) {
            return List.of(Quantity.of(
                    lines.stream().flatMap(line -> line.grams().stream()).reduce(Rationals.ZERO, RationalNumber::add),
                    Unit.GRAM));
        }
        return byDimension.values().stream().map(this::sum).toList();
    }

    private Quantity sum(List<WeighedLine> lines) {
        List<Quantity> quantities = lines.stream().map(Totals::quantity).toList();
        Unit unit = commonUnit(quantities);
        RationalNumber base = quantities.stream()
                .flatMap(quantity -> quantity.mostInBase(household).stream())
                .reduce(Rationals.ZERO, RationalNumber::add);
        return Quantity.of(unit.fromBase(base, household), unit);
    }

    /** The unit of them all, or the small metric one where they differ. */
    private static Unit commonUnit(List<Quantity> quantities) {
        List<Unit> units = quantities.stream().map(Quantity::unit).distinct().toList();
        if (units.size() == 1) {
            return units.get(0);
        }
        return switch (quantities.get(0).dimension()) {
            case MASS -> Unit.GRAM;
            case VOLUME -> Unit.MILLILITRE;
            default -> units.get(0);
        };
    }

    /** Grams and millilitres up to the next 5, 10 or 50, spoons and cups to the next quarter, pieces to the next whole. */
    static Quantity roundedUp(Quantity quantity) {
        RationalNumber value = quantity.amount().most().orElse(Rationals.ZERO);
        RationalNumber step =
                switch (quantity.unit()) {
                    case GRAM, MILLILITRE -> stepFor(value);
                    case KILOGRAM, LITRE -> Rationals.of(1, 20);
                    case EACH, PINCH -> Rationals.ONE;
                    default -> Rationals.of(1, 4);
                };
        RationalNumber near = Rationals.nearest(value, step);
        return Quantity.of(near.compareTo(value) < 0 ? near.add(step) : near, quantity.unit());
    }

    /** Grams and millilitres up to the next whole one; the rest as {@link #roundedUp}. */
    static Quantity wholeUp(Quantity quantity) {
        if (quantity.unit() != Unit.GRAM && quantity.unit() != Unit.MILLILITRE) {
            return roundedUp(quantity);
        }
        RationalNumber value = quantity.amount().most().orElse(Rationals.ZERO);
        RationalNumber near = Rationals.nearest(value, Rationals.ONE);
        return Quantity.of(near.compareTo(value) < 0 ? near.add(Rationals.ONE) : near, quantity.unit());
    }

    private static RationalNumber stepFor(RationalNumber value) {
        if (value.compareTo(FIFTY) <= 0) {
            return Rationals.of(5);
        }
        return value.compareTo(FIVE_HUNDRED) <= 0 ? Rationals.of(10) : FIFTY;
    }

    private static Quantity quantity(WeighedLine line) {
        return line.weighed().orElseThrow();
    }

    private static List<WeighedLine> joined(List<WeighedLine> some, List<WeighedLine> more) {
        return Stream.concat(some.stream(), more.stream()).toList();
    }
}
