package org.misecue.prep;

import java.util.List;
import java.util.Optional;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * What the scale shows of a full vessel beyond the empty one, so that a bowl can be checked without emptying it.
 *
 * @param grams of all contents together
 * @param tolerance how far off a right bowl may be: half a step of the scale for each thing that was weighed into it
 * @param about whether the pantry's weight of a spoon or a jug stands behind a part of it
 */
public record Reading(RationalNumber grams, RationalNumber tolerance, boolean about) {

    private static final RationalNumber TEN = Rationals.of(10);

    /** Empty where pieces are counted, and where a weight is unknown or no fixed one. */
    static Optional<Reading> of(List<Content> contents, RationalNumber scaleStep) {
        boolean known = contents.stream().allMatch(Reading::hasFixedWeight);
        if (!known || contents.isEmpty()) {
            return Optional.empty();
        }
        RationalNumber grams = contents.stream()
                .flatMap(content -> content.grams().stream())
                .reduce(Rationals.ZERO, RationalNumber::add);
        long weighings = contents.stream().filter(Reading::isWeighed).count();
        RationalNumber tolerance = scaleStep.multiply(Rationals.of(Math.max(1, weighings), 2));
        return Optional.of(new Reading(grams, tolerance, weighings < contents.size()));
    }

    private static boolean isWeighed(Content content) {
        return content.weighed().dimension() == Dimension.MASS;
    }

    private static boolean hasFixedWeight(Content content) {
        boolean fixed = content.weighed()
                .amount()
                .least()
                .equals(content.weighed().amount().most());
        boolean poured = content.weighed().dimension() == Dimension.VOLUME;
        return fixed && content.grams().isPresent() && (isWeighed(content) || poured);
    }

    /** "empty + 175 g ± 0.5 g", or "empty + about 124 g". */
    public String words() {
        String weight = Rationals.rounded(
                                grams, grams.compareTo(TEN) < 0 || tolerance.compareTo(Rationals.of(1, 4)) < 0 ? 1 : 0)
                        .stripTrailingZeros()
                        .toPlainString()
                + " g";
        return about
                ? "empty + about " + weight
                : "empty + " + weight + " ± "
                        + Rationals.decimal(tolerance).stripTrailingZeros().toPlainString() + " g";
    }
}
