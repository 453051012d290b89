package org.misecue.publish;

import java.util.Optional;
import org.misecue.pantry.HouseholdMeasure;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Amount;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.KitchenRounding;
import org.misecue.quantity.MeasureSystem;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;
import org.misecue.scale.WeighedLine;
import tech.units.indriya.function.RationalNumber;

/** The amount of a line in metric and household measures: the recipe's own second measure first, then the pantry's. */
final class MeasureText {

    private final Pantry pantry;
    private final KitchenRounding rounding;
    private final Amounts amounts;

    MeasureText(Pantry pantry, Household household, Amounts amounts) {
        this.amounts = amounts;
        this.pantry = pantry;
        this.rounding = new KitchenRounding(Quantity.of(1, Unit.GRAM), household);
    }

    /** @param factor of the published batch, by which a second measure that the recipe writes is multiplied too */
    String text(WeighedLine line, Quantity weighed, RationalNumber factor, Measures wanted) {
        if (weighed.unit().system() == MeasureSystem.SHARED) {
            return amounts.text(weighed);
        }
        Optional<String> other = other(line, weighed, factor);
        boolean metricFirst = wanted.only() == Measures.METRIC_ONLY;
        boolean asWritten = (weighed.unit().system() == MeasureSystem.METRIC) == metricFirst;
        String own = amounts.text(weighed);
        if (other.isEmpty()) {
            return own;
        }
        String first = asWritten ? own : other.get();
        String second = asWritten ? other.get() : own;
        return wanted == wanted.only() ? first : first + " (" + second + ")";
    }

    private Optional<String> other(WeighedLine line, Quantity weighed, RationalNumber factor) {
        boolean metric = weighed.unit().system() == MeasureSystem.METRIC;
        return line.written()
                .alternative()
                .filter(written -> (written.unit().system() == MeasureSystem.METRIC) != metric)
                .map(written ->
                        amounts.text(rounding.round(written.times(factor)).quantity()))
                .or(() -> metric
                        ? household(line, weighed)
                        : metric(line, weighed).map(amounts::text));
    }

    private Optional<String> household(WeighedLine line, Quantity weighed) {
        return pantry.find(line.written().ingredient())
                .flatMap(known -> HouseholdMeasure.of(weighed, known, rounding.household()))
                .or(() -> HouseholdMeasure.of(weighed, rounding.household()))
                .map(quantity -> amounts.spoons(quantity, rounding.household()));
    }

    /** Grams where the weight is known, which for a measure is about right only; millilitres of other volumes. */
    private Optional<Quantity> metric(WeighedLine line, Quantity weighed) {
        boolean mass = weighed.dimension() == Dimension.MASS;
        Quantity exact = line.grams()
                .map(grams -> Quantity.of(grams, Unit.GRAM))
                .orElseGet(() -> weighed.in(mass ? Unit.GRAM : Unit.MILLILITRE, rounding.household()));
        Quantity rounded = rounding.round(exact).quantity();
        return Optional.of(
                !mass && line.grams().isPresent()
                        ? new Quantity(new Amount.Approximate(rounded.amount(), "about"), rounded.unit())
                        : rounded);
    }
}
