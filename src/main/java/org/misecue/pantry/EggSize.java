package org.misecue.pantry;

import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * One size of eggs. In the shell about 10.5 % are shell (9–12 %: from memory), so 89.5 % can be eaten.
 *
 * @param word as recipes write it
 * @param from grams in the shell of the lightest
 * @param to grams in the shell that the heaviest stays below
 * @param edible grams without the shell of one
 */
record EggSize(String word, RationalNumber from, RationalNumber to, RationalNumber edible) {

    static final String MIDDLE = "89.5 % of the middle of the ";

    private static final RationalNumber LEAST_SHARE = Rationals.of(88, 100);
    private static final RationalNumber USUAL_SHARE = Rationals.of(895, 1000);
    private static final RationalNumber MOST_SHARE = Rationals.of(91, 100);
    private static final RationalNumber TWO = Rationals.of(2);

    /** By its class alone: the edible share of the middle. */
    static EggSize inShell(String word, long from, long to) {
        RationalNumber middle = Rationals.of(from).add(Rationals.of(to)).divide(TWO);
        return new EggSize(word, Rationals.of(from), Rationals.of(to), middle.multiply(USUAL_SHARE));
    }

    /** With a published weight without the shell. */
    static EggSize published(String word, long from, long to, long edible) {
        return new EggSize(word, Rationals.of(from), Rationals.of(to), Rationals.of(edible));
    }

    /** Of one piece, to the gram; between the lightest with the thickest shell and the heaviest with the thinnest. */
    Weight weight(EggPart part, String source) {
        RationalNumber grams = Rationals.nearest(part.of(edible), Rationals.ONE);
        RationalNumber low = part.of(from.multiply(LEAST_SHARE));
        RationalNumber high = part.of(to.multiply(MOST_SHARE));
        Spread spread =
                new Spread(low.compareTo(grams) < 0 ? low : grams, high.compareTo(grams) > 0 ? high : grams, source);
        return new Weight(Unit.EACH, grams, spread, source);
    }
}
