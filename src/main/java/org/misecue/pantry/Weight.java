package org.misecue.pantry;

import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * The weight of one household measure or one piece of an ingredient.
 *
 * @param unit CUP, TABLESPOON, TEASPOON, STICK or EACH
 * @param grams more than zero
 * @param spread the range in which kitchens' weights of it fall
 * @param source where the figure comes from
 */
public record Weight(Unit unit, RationalNumber grams, Spread spread, String source) {}
