package org.misecue.pantry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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

    private HouseholdMeasure() {}

    /**
     * About the same in cups, tablespoons or teaspoons, whatever is the largest that comes within a twentieth, and
     * always hedged with "about". Empty where the pantry has no weight for a mass, and for what is neither mass nor
     * volume.
     */
    public static Optional<Quantity> of(Quantity quantity, Ingredient ingredient, Household household) {
        return switch (quantity.dimension()) {
            case VOLUME -> Optional.of(measured(quantity, household));
            case MASS ->
                Weighing.gramsPerMillilitre(ingredient)
                        .map(density -> new Quantity(
                                quantity.in(Unit.GRAM, household)
                                        .times(Rationals.ONE.divide(density))
                                        .amount(),
                                Unit.MILLILITRE))
                        .map(volume -> measured(volume, household));
            default -> Optional.empty();
        };
    }

    /** The same for a volume alone, whatever it is of. */
    public static Optional<Quantity> of(Quantity volume, Household household) {
        return volume.dimension() == Dimension.VOLUME ? Optional.of(measured(volume, household)) : Optional.empty();
    }

    private static Quantity measured(Quantity volume, Household household) {
        KitchenRounding rounding = new KitchenRounding(Quantity.of(1, Unit.GRAM), household);
        List<KitchenRounding.Rounded> tries = new ArrayList<>();
        for (Unit unit : List.of(Unit.CUP, Unit.TABLESPOON, Unit.TEASPOON)) {
            tries.add(rounding.round(volume.in(unit, household)));
        }
        return tries.stream()
                .filter(rounded -> rounded.relativeError().abs().compareTo(CLOSE) <= 0)
                .findFirst()
                .or(() -> tries.stream().min((one, other) -> one.relativeError()
                        .abs()
                        .compareTo(other.relativeError().abs())))
                .map(rounded -> Weighing.about(rounded.quantity()))
                .orElseThrow();
    }
}
