package org.misecue.align;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Household;
import org.misecue.quantity.Quantity;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.spoken.SpokenQuantity;
import org.misecue.spoken.SpokenQuantity.Manner;
import tech.units.indriya.function.RationalNumber;

/** The amounts, temperatures and times by which each step of a recipe is known. */
final class StepAmounts {

    /** What a time or temperature is worth that one step states: hardly anything tells more. */
    private static final double SETTING = 6;

    private static final double AMOUNT = 2;

    /** Two spoons of one size are enough to tell a step by; verdicts are for others to give. */
    private static final Household HOUSEHOLD = Household.METRIC;

    private static final double TOLERANCE = 0.02;

    /** What is written: {@code [least, most]} in the base unit. */
    private record Written(Dimension dimension, double least, double most) {

        static Optional<Written> of(Quantity quantity) {
            return quantity.leastInBase(HOUSEHOLD).flatMap(least -> quantity.mostInBase(HOUSEHOLD)
                    .map(most -> new Written(quantity.dimension(), least.doubleValue(), most.doubleValue())));
        }

        boolean fits(Said said) {
            return dimension == said.dimension
                    && said.value >= least * (1 - TOLERANCE)
                    && said.value <= most * (1 + TOLERANCE);
        }
    }

    /** In the base unit. */
    private record Said(Dimension dimension, double value) {

        static Optional<Said> of(SpokenQuantity quantity) {
            if (quantity.isAside()) {
                return Optional.empty();
            }
            if (quantity.manner() == Manner.HEAT && quantity.unit().isEmpty()) {
                return quantity.amount().least().map(value -> new Said(Dimension.TEMPERATURE, value.doubleValue()));
            }
            return quantity.quantity().flatMap(known -> known.leastInBase(HOUSEHOLD)
                    .map(RationalNumber::doubleValue)
                    .map(value -> new Said(known.dimension(), value)));
        }
    }

    private record OfStep(int step, Written written) {}

    private final List<OfStep> settings = new ArrayList<>();
    private final List<OfStep> amounts = new ArrayList<>();
    private final List<Optional<Written>> ofLine;

    StepAmounts(Recipe recipe, StepLines stepLines) {
        this.ofLine = recipe.lines().stream()
                .map(line -> line.quantity().flatMap(Written::of))
                .toList();
        for (Step step : recipe.steps()) {
            step.settings().stream()
                    .flatMap(setting -> setting.figures().stream())
                    .flatMap(figure -> Written.of(figure).stream())
                    .forEach(written -> settings.add(new OfStep(step.number(), written)));
            stepLines.of(step.number()).stream()
                    .flatMap(line -> ofLine.get(line).stream())
                    .forEach(written -> amounts.add(new OfStep(step.number(), written)));
        }
    }

    /**
     * Adds what the amount says for each step.
     *
     * @return whether it says anything
     */
    boolean addTo(double[] support, SpokenQuantity quantity) {
        return Said.of(quantity)
                .map(said -> addTo(support, said, settings, SETTING) || addTo(support, said, amounts, AMOUNT))
                .orElse(false);
    }

    private static boolean addTo(double[] support, Said said, List<OfStep> written, double worth) {
        Set<Integer> steps = new HashSet<>();
        for (OfStep one : written) {
            if (one.written().fits(said)) {
                steps.add(one.step());
            }
        }
        steps.forEach(step -> support[step] += worth / steps.size());
        return !steps.isEmpty();
    }

    /** Whether the amount is what is written in the line. */
    boolean fits(SpokenQuantity quantity, int line) {
        return ofLine.get(line)
                .filter(written -> Said.of(quantity).filter(written::fits).isPresent())
                .isPresent();
    }
}
