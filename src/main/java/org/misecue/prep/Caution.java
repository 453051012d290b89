package org.misecue.prep;

import java.util.List;

/**
 * A reminder where the work is.
 *
 * @param what one or two sentences
 * @param brief the same in a few words, for a label
 * @param where the bowls and steps it concerns: "bowl 3, steps 2 and 4"
 * @param bowls the bowls alone
 * @param steps the steps alone
 * @param source where it comes from
 */
public record Caution(
        String what, String brief, String where, List<Integer> bowls, List<Integer> steps, String source) {}
