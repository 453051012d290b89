package org.misecue.align;

/**
 * A few words of the stream, as far as the next that tells anything.
 *
 * @param start the first word
 * @param words how many
 * @param opening how much it looks like the beginning of something: a cue begins, or somebody says "right, now"
 * @param takesUp whether something said earlier is taken up again: "I said one teaspoon, it's two"
 * @param support how much it speaks for each step, as the logarithm of a likelihood; index 0 is "before the method"
 */
@SuppressWarnings("ArrayRecordComponent") // never compared, and there are thousands
record Moment(int start, int words, double opening, boolean takesUp, double[] support) {}
