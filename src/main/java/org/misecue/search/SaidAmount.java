package org.misecue.search;

/**
 * An amount that is said in a passage.
 *
 * @param key its value, see {@link AmountKeys}
 * @param from its words are {@code [from, to)} of the passage's own; more than those where it goes on in the next cue
 */
public record SaidAmount(String key, int from, int to) {}
