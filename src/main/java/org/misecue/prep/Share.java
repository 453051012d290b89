package org.misecue.prep;

import java.util.List;
import tech.units.indriya.function.RationalNumber;

/**
 * The part of an ingredient line that one bowl holds.
 *
 * @param fraction of the whole line, more than zero and at most 1
 * @param words "half", "the rest", "2 tbsp"; empty for all of it
 * @param steps where it is used, first step first; empty where no step takes it
 */
record Share(RationalNumber fraction, String words, List<Integer> steps) {}
