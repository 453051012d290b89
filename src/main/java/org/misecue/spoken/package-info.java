/**
 * The journey of a sentence: words with times, numbers, quantities, mentions. {@code Listener} is the way in.
 */
@NullMarked
package org.misecue.spoken;

import org.jspecify.annotations.NullMarked;
