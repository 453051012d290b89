package org.misecue.pantry;

import tech.units.indriya.function.RationalNumber;

/**
 * Between which weights kitchens' fillings of one measure fall: flour may be sifted into the cup or scooped with it.
 *
 * @param low grams, above zero and at most the weight itself
 * @param high grams, at least the weight itself
 * @param source where the range comes from
 */
public record Spread(RationalNumber low, RationalNumber high, String source) {

    /** No spread: a mass is what the scale says. */
    static Spread none(RationalNumber grams) {
        return new Spread(grams, grams, "weighed");
    }

    Spread times(RationalNumber factor) {
        return new Spread(low.multiply(factor), high.multiply(factor), source);
    }
}
