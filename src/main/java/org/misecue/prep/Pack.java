package org.misecue.prep;

import org.misecue.quantity.Quantity;

/**
 * Packs of one size.
 *
 * @param count how many
 * @param size what one holds
 * @param word "bag", "box"; empty where the size says enough
 */
public record Pack(long count, Quantity size, String word) {}
