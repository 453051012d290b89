package org.misecue.recipe;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * How much goes into a tin, filled to the brim: from the smallest to the largest that is sold under its name. Depths and
 * loaf sizes are common practice, no source.
 *
 * @param low millilitres at least
 * @param high millilitres at most
 */
record TinRoom(RationalNumber low, RationalNumber high) {

    /** π to six decimal places. */
    private static final RationalNumber PI = Rationals.of(355, 113);

    private static final RationalNumber POUND = Rationals.of("453.59237");

    private static final Cued FLAT = Cued.of("\\b(?:sheet|tray|rack|skillet|roasting|frying|griddle|stone|ring)s?\\b");
    private static final Cued HOLES = Cued.of("\\b(?:muffin|cupcake|bun|patty|tart|tartlet|fairy)\\b");
    private static final Cued SHALLOW = Cued.of("\\b(?:tart|flan|quiche|pie|sandwich|fluted)\\b");

    /** Empty for what has no walls, such as a baking sheet, and for sizes that tell no volume. */
    static Optional<TinRoom> of(Setting tin) {
        if (FLAT.standsIn(Wording.of(tin.what())) && tin.quantity().unit() != Unit.EACH) {
            return Optional.empty();
        }
        return one(tin).map(room -> new TinRoom(
                room.low.multiply(Rationals.of(tin.count())), room.high.multiply(Rationals.of(tin.count()))));
    }

    private static Optional<TinRoom> one(Setting tin) {
        Optional<RationalNumber> size =
                tin.quantity().leastInBase(Household.METRIC).filter(value -> value.signum() > 0);
        return size.flatMap(value -> switch (tin.quantity().dimension()) {
            case COUNT -> holes(tin, value);
            case VOLUME -> Optional.of(times(value, 1, 1, Rationals.of(11, 10)));
            case MASS ->
                tin.what().contains("loaf")
                        ? Optional.of(times(value.divide(POUND), 450, 1000, Rationals.ONE))
                        : Optional.empty();
            case LENGTH -> sized(tin, value);
            default -> Optional.empty();
        });
    }

    private static Optional<TinRoom> holes(Setting tin, RationalNumber holes) {
        if (tin.what().contains("mini")) {
            return Optional.of(times(holes, 15, 45, Rationals.ONE));
        }
        return HOLES.standsIn(Wording.of(tin.what()))
                ? Optional.of(times(holes, 20, 200, Rationals.ONE))
                : Optional.empty();
    }

    private static Optional<TinRoom> sized(Setting tin, RationalNumber first) {
        List<RationalNumber> sides = Stream.concat(Stream.of(tin.quantity()), tin.also().stream())
                .filter(side -> side.unit() == tin.quantity().unit() && side.dimension() == Dimension.LENGTH)
                .map(side -> side.leastInBase(Household.METRIC))
                .flatMap(Optional::stream)
                .toList();
        if (tin.what().contains("loaf") && sides.size() < 3) {
            return Optional.of(times(first, 35, 150, Rationals.ONE));
        }
        boolean round = tin.what().contains("round") || tin.what().contains("springform");
        Optional<RationalNumber> depth = tin.depth()
                .flatMap(deep -> deep.leastInBase(Household.METRIC))
                .or(() -> round && sides.size() == 2 ? Optional.of(sides.get(1)) : Optional.empty());
        if (depth.isPresent()) {
            RationalNumber base = base(tin, round ? List.of(first) : sides, first);
            return Optional.of(times(base.multiply(depth.get()), 1, 1, Rationals.ONE));
        }
        if (sides.size() >= 3) {
            RationalNumber whole = first.multiply(sides.get(1)).multiply(sides.get(2));
            return Optional.of(new TinRoom(whole, whole));
        }
        RationalNumber base = base(tin, sides, first);
        if (sides.size() == 2) {
            return Optional.of(times(base, 2, 10, Rationals.ONE));
        }
        boolean shallow = SHALLOW.standsIn(Wording.of(tin.what()));
        return Optional.of(times(base, 2, shallow ? 6 : 12, Rationals.ONE));
    }

    private static RationalNumber base(Setting tin, List<RationalNumber> sides, RationalNumber first) {
        if (sides.size() >= 2) {
            return first.multiply(sides.get(1));
        }
        RationalNumber square = first.multiply(first);
        return tin.what().contains("square") ? square : square.multiply(PI).divide(Rationals.of(4));
    }

    private static TinRoom times(RationalNumber value, long low, long high, RationalNumber more) {
        return new TinRoom(
                value.multiply(Rationals.of(low)),
                value.multiply(Rationals.of(high)).multiply(more));
    }
}
