package org.misecue.pantry;

import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * Volume and pieces to mass, through the weights of the pantry: the only place where they meet. The pantry weighs US
 * customary measures; other households' cups and spoons are weighed by their size.
 */
public final class Weighing {

    private Weighing() {}

    /**
     * The weight in grams: exact for a mass; for a measure or pieces hedged with "about", for its weight is a habit.
     * Empty where the pantry has no weight, and for a pinch.
     */
    public static Optional<Quantity> inGrams(Quantity quantity, Ingredient ingredient, Household household) {
        return weighed(quantity, ingredient, household).map(Weighed::grams);
    }

    /** The same with the range in which the weight may really fall. */
    public static Optional<Weighed> weighed(Quantity quantity, Ingredient ingredient, Household household) {
        if (quantity.dimension() == Dimension.MASS) {
            Quantity grams = quantity.in(Unit.GRAM, household);
            return Optional.of(new Weighed(grams, between(grams, Spread.none(Rationals.ONE)), "weighed"));
        }
        if (quantity.amount().least().isEmpty()) {
            return Optional.empty();
        }
        return ofOne(quantity.unit(), ingredient, household)
                .map(one -> new Weighed(
                        about(new Quantity(quantity.times(one.grams()).amount(), Unit.GRAM)),
                        between(quantity, one.spread()),
                        one.source()));
    }

    /** From the least of the lower end to the most of the upper end. */
    private static Spread between(Quantity quantity, Spread one) {
        RationalNumber least = quantity.amount().least().orElse(Rationals.ZERO);
        RationalNumber most = quantity.amount().most().orElse(least);
        return new Spread(one.low().multiply(least), one.high().multiply(most), one.source());
    }

    /** The weight in grams to have ready: of a range the upper end. */
    public static Optional<RationalNumber> grams(Quantity quantity, Ingredient ingredient, Household household) {
        return inGrams(quantity, ingredient, household)
                .flatMap(grams -> grams.amount().most());
    }

    /** Grams in a millilitre, from the largest measure that the pantry weighs. */
    public static Optional<RationalNumber> gramsPerMillilitre(Ingredient ingredient) {
        return largest(ingredient).map(weight -> weight.grams().divide(millilitres(weight)));
    }

    private static Optional<Weight> largest(Ingredient ingredient) {
        return ingredient.weights().stream()
                .filter(weight -> weight.unit().dimension() == Dimension.VOLUME)
                .max((one, other) -> millilitres(one).compareTo(millilitres(other)));
    }

    /** One such measure of this household, or one piece. */
    private static Optional<Weight> ofOne(Unit unit, Ingredient ingredient, Household household) {
        Optional<Weight> own = weighed(ingredient.weights(), unit);
        return switch (unit.dimension()) {
            case COUNT -> own;
            case VOLUME ->
                own.or(() -> largest(ingredient))
                        .map(weight -> sized(weight, unit, unit.toBase(Rationals.ONE, household)));
            default -> Optional.empty();
        };
    }

    private static Weight sized(Weight weight, Unit unit, RationalNumber millilitres) {
        RationalNumber factor = millilitres.divide(millilitres(weight));
        return new Weight(unit, weight.grams().multiply(factor), weight.spread().times(factor), weight.source());
    }

    private static Optional<Weight> weighed(List<Weight> weights, Unit unit) {
        return weights.stream().filter(weight -> weight.unit() == unit).findFirst();
    }

    private static RationalNumber millilitres(Weight weight) {
        return weight.unit().toBase(Rationals.ONE, Household.US_CUSTOMARY);
    }

    static Quantity about(Quantity quantity) {
        return quantity.amount().hedged()
                ? quantity
                : new Quantity(new Amount.Approximate(quantity.amount(), "about"), quantity.unit());
    }
}
