package org.misecue.prep;

import java.util.List;
import java.util.Optional;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.pantry.Weighing;
import org.misecue.pantry.Weight;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/** Grams and millilitres of an ingredient, where the pantry has a weight for a cup, a spoon or a piece of it. */
record Weights(Pantry pantry, Household household) {

    /** How loose dry and solid things lie: 0.6 g in a millilitre, common practice, no source. */
    private static final RationalNumber USUAL_DENSITY = Rationals.of(3, 5);

    private static final RationalNumber PIECES_ML = Rationals.of(100);

    /** Grams of an exact amount, or of the lower end of a range; empty where nothing tells. */
    Optional<RationalNumber> grams(Quantity quantity, String ingredient) {
        Optional<RationalNumber> base = quantity.leastInBase(household);
        return switch (quantity.dimension()) {
            case MASS -> base;
            case COUNT -> base.flatMap(count -> piece(ingredient).map(count::multiply));
            case VOLUME -> base.flatMap(ml -> density(ingredient).map(ml::multiply));
            default -> Optional.empty();
        };
    }

    /** The room it takes up, for choosing a vessel: an estimate. Pieces of unknown weight are given a small bowl's room. */
    RationalNumber millilitres(Quantity quantity, Optional<RationalNumber> grams, String ingredient, boolean liquid) {
        if (quantity.dimension() == Dimension.VOLUME) {
            return quantity.mostInBase(household).orElse(Rationals.ZERO);
        }
        RationalNumber density = density(ingredient).orElse(liquid ? Rationals.ONE : USUAL_DENSITY);
        boolean pieces = quantity.dimension() == Dimension.COUNT;
        return grams.map(weight -> weight.divide(density)).orElse(pieces ? PIECES_ML : Rationals.ZERO);
    }

    private Optional<RationalNumber> piece(String ingredient) {
        return weights(ingredient, Unit.EACH).map(Weight::grams);
    }

    private Optional<RationalNumber> density(String ingredient) {
        return pantry.find(ingredient).flatMap(Weighing::gramsPerMillilitre);
    }

    private Optional<Weight> weights(String ingredient, Unit unit) {
        return pantry.find(ingredient).map(Ingredient::weights).stream()
                .flatMap(List::stream)
                .filter(weight -> weight.unit() == unit)
                .findFirst();
    }
}
