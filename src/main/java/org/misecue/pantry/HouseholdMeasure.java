package org.misecue.pantry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.KitchenRounding;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/** What to write beside grams and millilitres for people who cook with cups and spoons. */
public final class HouseholdMeasure {

    private static final RationalNumber CLOSE = Rationals.of(1, 20);
    private static final RationalNumber MANY = Rationals.of(1_000_000);

    private HouseholdMeasure() {}

    /**
     * About the same in cups, tablespoons or teaspoons, the largest that comes within a twentieth, otherwise the
     * nearest; always hedged with "about". Empty where the pantry has no weight for a mass, and for what is neither mass nor
     * volume.
     */
    public static Optional<Quantity> of(Quantity quantity, Ingredient ingredient, Household household) {
        return switch (quantity.dimension()) {
            case VOLUME -> of(quantity, household);
            case MASS ->
                Weighing.gramsPerMillilitre(ingredient)
                        .map(density -> new Quantity(
                                quantity.in(Unit.GRAM, household)
                                        .times(Rationals.ONE.divide(density))
                                        .amount(),
                                Unit.MILLILITRE))
                        .flatMap(volume -> of(volume, household));
            default -> Optional.empty();
        };
    }

    /** The same for a volume alone, whatever it is of; empty for anything else and for what states no amount. */
    public static Optional<Quantity> of(Quantity volume, Household household) {
        if (volume.dimension() != Dimension.VOLUME || volume.amount().least().isEmpty()) {
            return Optional.empty();
        }
        List<KitchenRounding.Rounded> tries = Stream.of(Spoon.values())
                .map(spoon -> new Sized(spoon, volume.in(spoon.unit, household)))
                .filter(Sized::fits)
                .map(Sized::rounded)
                .toList();
        return tries.stream()
                .filter(one -> one.relativeError().abs().compareTo(CLOSE) <= 0)
                .findFirst()
                .or(() -> tries.stream().min((one, other) -> one.relativeError()
                        .abs()
                        .compareTo(other.relativeError().abs())))
                .map(best -> Weighing.about(best.quantity()));
    }

    /** The measures from large to small: how much of each is asked for. Large amounts may come to many tablespoons. */
    private enum Spoon {
        CUP(Unit.CUP, Rationals.of(1, 4), MANY),
        TABLESPOON(Unit.TABLESPOON, Rationals.ONE, MANY),
        TEASPOON(Unit.TEASPOON, Rationals.ZERO, Rationals.of(12));

        private final Unit unit;
        private final RationalNumber fewest;
        private final RationalNumber most;

        Spoon(Unit unit, RationalNumber fewest, RationalNumber most) {
            this.unit = unit;
            this.fewest = fewest;
            this.most = most;
        }
    }

    private record Sized(Spoon spoon, Quantity exact) {

        boolean fits() {
            return exact.amount()
                            .least()
                            .filter(least -> least.compareTo(spoon.fewest) >= 0)
                            .isPresent()
                    && exact.amount()
                            .most()
                            .filter(most -> most.compareTo(spoon.most) <= 0)
                            .isPresent();
        }

        KitchenRounding.Rounded rounded() {
            return switch (spoon) {
                case CUP -> KitchenRounding.toCups(exact);
                case TABLESPOON -> KitchenRounding.toHalves(exact);
                case TEASPOON -> KitchenRounding.toTeaspoons(exact);
            };
        }
    }
}
