package org.misecue.prep;

/**
 * A reminder where the work is.
 *
 * @param what one or two sentences
 * @param where the bowls and steps it concerns: "bowl 3, steps 2 and 4"
 * @param source where it comes from
 */
public record Caution(String what, String where, String source) {}
