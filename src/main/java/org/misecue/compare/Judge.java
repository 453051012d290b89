package org.misecue.compare;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.spoken.Words;
import tech.units.indriya.function.RationalNumber;

/**
 * Holds one said amount against one written amount. Equal within 2 % in one family of measures agrees; hedged, or in
 * another family, or by the ordinary density of the kitchen, within 10 % is approximate; all else differs.
 */
final class Judge {

    private static final RationalNumber EQUAL = Rationals.of(2, 100);
    private static final RationalNumber CLOSE = Rationals.of(10, 100);

    /** Whose cup a speaker means is seldom said: any of them will do for an ordinary density. */
    private static final List<Household> CUPS = List.of(Household.US_CUSTOMARY, Household.US_LABEL, Household.METRIC);

    private static final Set<String> LIQUIDS =
            Words.set("milk cream water juice stock coffee tea passata yogurt yoghurt");

    private final Household household;

    Judge(Household household) {
        this.household = household;
    }

    /** Of a line of the recipe that was heard. */
    Verdict of(int line, Quantity said, Hearing heard) {
        return of(heard.lines.get(line), said, heard.ingredientOfLine.get(line));
    }

    /** The best of what it comes to against each figure of the line. */
    Verdict of(IngredientLine written, Quantity said, Optional<Ingredient> ingredient) {
        return figures(written, said).stream()
                .map(figure -> of(figure, said, ingredient))
                .min(Comparator.naturalOrder())
                .orElse(Verdict.DIFFERS);
    }

    /** What the amount is held against: the figures in its own unit where there is one, else all. */
    static List<Quantity> figures(IngredientLine written, Quantity said) {
        List<Quantity> all = Stream.concat(written.quantity().stream(), written.alternative().stream())
                .toList();
        List<Quantity> same =
                all.stream().filter(figure -> figure.unit() == said.unit()).toList();
        return same.isEmpty() ? all : same;
    }

    Verdict of(Quantity written, Quantity said, Optional<Ingredient> ingredient) {
        if (written.dimension() == said.dimension()) {
            return sameDimension(written, said);
        }
        boolean anyCup =
                said.unit() == Unit.CUP && CUPS.stream().anyMatch(cup -> isClose(written, said, ingredient, cup));
        boolean close = anyCup || isClose(written, said, ingredient, household);
        return close ? Verdict.APPROXIMATE : Verdict.DIFFERS;
    }

    private static boolean isClose(
            Quantity written, Quantity said, Optional<Ingredient> ingredient, Household household) {
        Optional<RationalNumber> a = gramsOf(written, ingredient, household);
        Optional<RationalNumber> b = gramsOf(said, ingredient, household);
        return a.isPresent()
                && b.isPresent()
                && distance(a.get(), a.get(), b.get(), b.get()).compareTo(CLOSE) <= 0;
    }

    private Verdict sameDimension(Quantity written, Quantity said) {
        Optional<RationalNumber> least = written.leastInBase(household);
        Optional<RationalNumber> saidLeast = said.leastInBase(household);
        if (least.isEmpty() || saidLeast.isEmpty()) {
            return Verdict.DIFFERS;
        }
        RationalNumber most = written.mostInBase(household).orElse(least.get());
        RationalNumber saidMost = said.mostInBase(household).orElse(saidLeast.get());
        boolean plain = Hearing.sameSystem(written.unit(), said.unit())
                && !said.amount().hedged();
        if (plain && inside(least.get(), most, saidLeast.get(), saidMost)) {
            return Verdict.AGREES;
        }
        RationalNumber gap = distance(least.get(), most, saidLeast.get(), saidMost);
        RationalNumber allowed = plain ? Rationals.ZERO : CLOSE;
        return gap.compareTo(allowed) <= 0 ? Verdict.APPROXIMATE : Verdict.DIFFERS;
    }

    /** Whether only another kitchen's tablespoon would make the amount agree. */
    boolean isByOtherSpoon(Quantity written, Quantity said) {
        boolean spoons = said.unit() == Unit.TABLESPOON && written.unit() == Unit.MILLILITRE;
        Household other = household == Household.AUSTRALIAN ? Household.METRIC : Household.AUSTRALIAN;
        return spoons
                && sameDimension(written, said) == Verdict.DIFFERS
                && new Judge(other).sameDimension(written, said) == Verdict.AGREES;
    }

    private static boolean inside(RationalNumber least, RationalNumber most, RationalNumber from, RationalNumber to) {
        RationalNumber low = least.subtract(least.multiply(EQUAL));
        RationalNumber high = most.add(most.multiply(EQUAL));
        return from.compareTo(low) >= 0 && to.compareTo(high) <= 0;
    }

    /** The gap between two stretches as a share of the written one's nearer end; zero where they touch. */
    private static RationalNumber distance(
            RationalNumber least, RationalNumber most, RationalNumber from, RationalNumber to) {
        if (to.compareTo(least) < 0) {
            return share(least.subtract(to), least);
        }
        return from.compareTo(most) > 0 ? share(from.subtract(most), most) : Rationals.ZERO;
    }

    private static RationalNumber share(RationalNumber gap, RationalNumber of) {
        return of.signum() == 0 ? Rationals.ONE : gap.divide(of.signum() < 0 ? of.negate() : of);
    }

    /** By the pantry; a liquid that it does not weigh is taken for water, which milk and cream come near. From memory. */
    private static Optional<RationalNumber> density(Ingredient ingredient) {
        return Weighing.gramsPerMillilitre(ingredient)
                .or(() -> Words.content(ingredient.name()).stream().anyMatch(LIQUIDS::contains)
                        ? Optional.of(Rationals.ONE)
                        : Optional.empty());
    }

    /** The weight, by itself or through the pantry's weight of a cup, spoon or piece. */
    private static Optional<RationalNumber> gramsOf(
            Quantity quantity, Optional<Ingredient> ingredient, Household household) {
        if (quantity.dimension() == Dimension.MASS) {
            return quantity.leastInBase(household);
        }
        if (quantity.dimension() == Dimension.VOLUME) {
            return ingredient.flatMap(Judge::density).flatMap(density -> quantity.leastInBase(household)
                    .map(density::multiply));
        }
        return Optional.empty();
    }
}
