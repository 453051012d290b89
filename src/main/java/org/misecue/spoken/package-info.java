/**
 * The journey of a sentence: words with times, numbers, quantities, names. {@link org.misecue.spoken.WordStream} puts the
 * words of all narrations in a row; {@link org.misecue.spoken.QuantityListener} and
 * {@link org.misecue.spoken.NameListener} are the ways in.
 */
@NullMarked
package org.misecue.spoken;

import org.jspecify.annotations.NullMarked;
