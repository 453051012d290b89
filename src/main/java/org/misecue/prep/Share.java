package org.misecue.prep;

import java.util.List;
import tech.units.indriya.function.RationalNumber;

/**
 * The part of an ingredient line that one bowl holds.
 *
 * @param fraction of the whole line, more than zero and at most 1
 * @param words "half", "the rest", "2 tbsp"; empty for all of it
 * @param steps where it is used, first step first; empty where no step takes it
 * @param at which addition of its step it is, from 1
 * @param of in how many additions the step takes it; 1 for at once
 */
record Share(RationalNumber fraction, String words, List<Integer> steps, int at, int of) {

    Share(RationalNumber fraction, String words, List<Integer> steps) {
        this(fraction, words, steps, 1, 1);
    }

    Share addition(RationalNumber part, int number, int all) {
        return new Share(part, words, steps, number, all);
    }

    /** ", addition 1 of 2"; empty for what goes in at once. */
    String additionWords() {
        return of == 1 ? "" : ", addition %d of %d".formatted(at, of);
    }
}
