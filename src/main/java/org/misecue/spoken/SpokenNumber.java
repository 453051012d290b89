package org.misecue.spoken;

import org.misecue.quantity.Amount;

/**
 * A number heard in {@code [start, end)} of the stream.
 *
 * @param amount exact or a range, never hedged here
 * @param fraction whether it is a bare fraction ("half", "three quarters"), which needs something to be a part of
 */
public record SpokenNumber(int start, int end, Amount amount, boolean fraction) {}
