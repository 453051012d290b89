package org.misecue.recipe;

import java.util.Optional;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * A share of an ingredient line.
 *
 * @param part the amount where it can be told
 * @param words what the step says; empty for all of it, or where a bare amount says it
 * @param ofTheRest the fraction of what is left; zero where the share is none of what is left
 */
record Share(Optional<Quantity> part, String words, RationalNumber ofTheRest) {

    static final String REST = "the rest";
    static final Share ALL = new Share(Optional.empty(), "");

    Share(Optional<Quantity> part, String words) {
        this(part, words, words.equals(REST) ? Rationals.ONE : Rationals.ZERO);
    }

    static Share rest() {
        return new Share(Optional.empty(), REST);
    }

    static Share ofTheRest(String words, RationalNumber fraction) {
        return new Share(Optional.empty(), words + " of the rest", fraction);
    }

    /** All of a line but an amount; without the figure where the two cannot be subtracted. */
    static Share allBut(IngredientLine line, Quantity kept) {
        Optional<Quantity> rest = line.quantity().flatMap(whole -> Leftovers.minus(whole, kept));
        return new Share(rest, "most");
    }

    Share setAside() {
        return new Share(part, part.isPresent() ? Use.SET_ASIDE : words, ofTheRest);
    }

    Share with(Optional<Quantity> known) {
        return new Share(known, words, ofTheRest);
    }

    boolean isAll() {
        return part.isEmpty() && words.isEmpty();
    }

    boolean isRest() {
        return ofTheRest.signum() > 0;
    }
}
