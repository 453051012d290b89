/**
 * The journey of a sentence: {@link org.misecue.spoken.WordStream} makes one stream of tokens out of all cues,
 * {@link org.misecue.spoken.NumberGrammar} reads numbers in it, {@link org.misecue.spoken.QuantityListener} amounts with
 * their hedges and asides with their reasons, and {@link org.misecue.spoken.NameListener} the ingredients that are named.
 * What belongs to what is decided in {@code compare}.
 *
 * <p>A rule is found by its name. {@code QuantityGrammar}, {@code RecipeNameFinder}, {@code Labels} and
 * {@code OtherStories} list those that are asked in turn; {@link org.misecue.spoken.Mechanism} lists what can be switched
 * off to see what it is worth. Phrases are in {@code phrases.txt}.
 */
@NullMarked
package org.misecue.spoken;

import org.jspecify.annotations.NullMarked;
