package org.misecue.compare;

import org.misecue.quantity.Quantity;

/**
 * An amount said for one ingredient line.
 *
 * @param start first deciding word in the stream
 * @param end after the last deciding word
 * @param line the ingredient line, as an index into {@code Recipe.lines()}
 * @param quantity what was said, in the speaker's unit; in the line's own where only a number was said
 * @param assumedUnit whether the unit was taken from the written line
 * @param role what it does to what was said before
 * @param score how surely it belongs to the line; above {@link Scoring#SURE} there is no real doubt
 * @param provisional whether it was a question or what ought to be, and stands only until something else is said
 */
record Mention(
        int start,
        int end,
        int line,
        Quantity quantity,
        boolean assumedUnit,
        Role role,
        double score,
        boolean provisional) {

    /** What a mention does to the amount that stood before it. */
    enum Role {
        STATES,
        ADDS,
        CORRECTS,
        /** The same amount in another measure. */
        RESTATES
    }

    /** One that nothing told of while it was heard, and that is never sure. */
    static Mention foundLate(int line, int start, int end, Quantity quantity, boolean assumedUnit) {
        return new Mention(start, end, line, quantity, assumedUnit, Role.STATES, Scoring.ENOUGH, false);
    }

    Mention with(Role other) {
        return new Mention(start, end, line, quantity, assumedUnit, other, score, provisional);
    }

    Mention with(Quantity other) {
        return new Mention(start, end, line, other, assumedUnit, role, score, provisional);
    }
}
