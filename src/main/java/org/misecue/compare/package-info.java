/**
 * Written against spoken: one verdict per written quantity, with its evidence. {@code Comparer} is the way in and gives
 * a {@link org.misecue.compare.Comparison}. A wrong quantity must never be reported as agreeing.
 */
@NullMarked
package org.misecue.compare;

import org.jspecify.annotations.NullMarked;
