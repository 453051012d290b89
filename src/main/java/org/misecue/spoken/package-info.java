/**
 * The journey of a sentence: {@link org.misecue.spoken.WordStream} makes one stream of tokens out of all cues,
 * {@link org.misecue.spoken.NumberGrammar} reads numbers in it, {@link org.misecue.spoken.QuantityListener} amounts with
 * their hedges and asides with their reasons, and {@link org.misecue.spoken.NameListener} the ingredients that are named.
 * What belongs to what is decided in {@code compare}.
 */
@NullMarked
package org.misecue.spoken;

import org.jspecify.annotations.NullMarked;
