package org.misecue.scale;

import java.util.Optional;
import org.misecue.pantry.HouseholdMeasure;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.KitchenRounding;
import org.misecue.quantity.MeasureSystem;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * A system of measures that a batch can be written in. The exact amount is converted, and then rounded as a person
 * measures in that system. A second amount that the recipe itself writes counts before the pantry's weight; what comes
 * from the pantry is hedged with "about". Spoons and pieces are the same everywhere and stay.
 */
public enum Measuring {
    /** Grams and millilitres. */
    METRIC {
        @Override
        boolean has(Unit unit) {
            return unit.system() == MeasureSystem.METRIC;
        }

        @Override
        Optional<Quantity> of(Quantity exact, Optional<Ingredient> ingredient, Household theirs) {
            boolean pours = ingredient.filter(Measuring::pours).isPresent();
            return exact.dimension() == Dimension.MASS
                    ? Optional.of(exact.in(Unit.GRAM, theirs))
                    : ingredient
                            .filter(known -> !pours)
                            .flatMap(known -> Weighing.inGrams(exact, known, theirs))
                            .or(() -> Optional.of(exact.in(Unit.MILLILITRE, theirs)));
        }
    },
    /** Cups and spoons of the United States; ounces and pounds of what has no known cup. */
    US {
        @Override
        boolean has(Unit unit) {
            return unit.system() == MeasureSystem.HOUSEHOLD;
        }

        @Override
        Optional<Quantity> of(Quantity exact, Optional<Ingredient> ingredient, Household theirs) {
            Quantity fixed = fixed(exact, theirs);
            return ingredient
                    .flatMap(known -> HouseholdMeasure.of(fixed, known, Household.US_CUSTOMARY))
                    .or(() -> HouseholdMeasure.of(fixed, Household.US_CUSTOMARY))
                    .or(() -> Optional.of(fixed)
                            .filter(quantity -> quantity.dimension() == Dimension.MASS)
                            .map(quantity -> quantity.in(Unit.OUNCE, theirs)));
        }

        @Override
        Household household(Household own) {
            return Household.US_CUSTOMARY;
        }
    },
    /** Ounces and pounds, imperial fluid ounces and pints. */
    IMPERIAL {
        @Override
        boolean has(Unit unit) {
            return unit == Unit.OUNCE || unit == Unit.POUND;
        }

        @Override
        Optional<Quantity> of(Quantity exact, Optional<Ingredient> ingredient, Household theirs) {
            Quantity fixed = fixed(exact, theirs);
            if (fixed.dimension() == Dimension.MASS) {
                return Optional.of(fixed.in(Unit.OUNCE, theirs));
            }
            boolean pours = ingredient.map(Measuring::pours).orElse(true)
                    || exact.unit().system() == MeasureSystem.METRIC;
            return ingredient
                    .filter(known -> !pours)
                    .flatMap(known -> Weighing.inGrams(exact, known, theirs))
                    .map(grams -> grams.in(Unit.OUNCE, theirs))
                    .or(() -> Optional.of(fixed.in(Unit.FLUID_OUNCE, Household.IMPERIAL)));
        }

        @Override
        Household household(Household own) {
            return Household.IMPERIAL;
        }
    };

    /** Whether amounts in the unit stay as they are. */
    abstract boolean has(Unit unit);

    /** The exact amount in this system; a household of the recipe's kitchen says how large its own cups are. */
    abstract Optional<Quantity> of(Quantity exact, Optional<Ingredient> ingredient, Household theirs);

    /** Whose cups this system writes. */
    Household household(Household own) {
        return own;
    }

    /** The batch in this system, by the measures of the kitchen that it was scaled for. */
    public ScaledSheet.Column write(ScaledRecipe scaled, ScaleRules rules, Pantry pantry) {
        return new ScaledSheet.Column(
                scaled.with(scaled.lines().stream()
                        .map(line -> line(line, scaled.factor(), rules, pantry))
                        .toList()),
                household(rules.household()));
    }

    private WeighedLine line(WeighedLine line, RationalNumber factor, ScaleRules rules, Pantry pantry) {
        boolean stays = line.exact()
                .filter(exact -> exact.amount().most().isPresent())
                .filter(exact -> exact.dimension() == Dimension.MASS || exact.dimension() == Dimension.VOLUME)
                .filter(exact -> !has(exact.unit()) && exact.unit().system() != MeasureSystem.SHARED)
                .isEmpty();
        if (stays) {
            return line;
        }
        Household own = household(rules.household());
        Optional<Ingredient> ingredient = pantry.find(line.written().ingredient());
        return line.written()
                .alternative()
                .filter(beside -> has(beside.unit()))
                .map(beside -> beside.times(factor))
                .or(() -> of(line.exact().orElseThrow(), ingredient, rules.household()))
                .map(wanted -> new KitchenRounding(rules.resolution(), own).round(wanted))
                .map(rounded -> new WeighedLine(
                        line.component(),
                        line.written(),
                        line.exact(),
                        Optional.of(rounded.quantity()),
                        line.grams(),
                        Optional.of(rounded.relativeError())))
                .orElse(line);
    }

    private static boolean pours(Ingredient ingredient) {
        return ingredient.kind().equals("liquid") || ingredient.kind().equals("syrup");
    }

    /** In a unit of which no household has its own. */
    private static Quantity fixed(Quantity exact, Household theirs) {
        return switch (exact.dimension()) {
            case MASS -> exact.in(Unit.GRAM, theirs);
            case VOLUME -> exact.in(Unit.MILLILITRE, theirs);
            default -> exact;
        };
    }
}
