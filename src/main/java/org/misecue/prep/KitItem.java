package org.misecue.prep;

import java.util.List;

/**
 * A tool, tin or set of vessels.
 *
 * @param what with the number where more than one is needed: "2 × 20 cm round cake tins"
 * @param steps where it is used; empty for all through
 */
public record KitItem(String what, List<Integer> steps) {}
