package org.misecue.offers;

import java.util.Optional;

/**
 * Something that may take the place of something, as a frame finds it in {@code [start, end)}.
 *
 * @param line of the recipe that it may take the place of
 * @param verb where the verb or the comparison stands whose subject tells whose doing it is
 * @param clause where the clause of that verb begins: behind the condition, if there is one
 */
record Proposal(int start, int end, int line, Portion use, int verb, int clause) {

    /** A way of offering something. */
    interface Frame {
        Optional<Proposal> at(int start);
    }
}
