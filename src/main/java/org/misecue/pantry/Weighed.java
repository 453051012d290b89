package org.misecue.pantry;

import org.misecue.quantity.Quantity;

/**
 * A weight with the range in which it may really fall.
 *
 * @param grams as the pantry has it; hedged with "about" unless it was a mass
 * @param spread the least and the most it may weigh in grams, of a range from its lower end's least to its upper end's
 *     most; both the same for a mass
 * @param source where the weight comes from
 */
public record Weighed(Quantity grams, Spread spread, String source) {}
