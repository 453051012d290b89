/**
 * Amounts with units, ranges and hedges. {@link org.misecue.quantity.Quantity} is the way in: an
 * {@link org.misecue.quantity.Amount} in exact rationals with a {@link org.misecue.quantity.Unit} of the kitchen, whose
 * sizes come from JSR-385 units. {@code QuantityReader} and {@code QuantityWriter} turn written amounts into quantities
 * and back; {@code KitchenRounding} rounds as a person weighs. Mass, volume, count, temperature, duration and length
 * never mix here.
 */
@NullMarked
package org.misecue.quantity;

import org.jspecify.annotations.NullMarked;
