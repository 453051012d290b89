/**
 * Which step of the method is on at each moment. {@code Aligner} is the way in and gives an
 * {@link org.misecue.align.Alignment}.
 */
@NullMarked
package org.misecue.align;

import org.jspecify.annotations.NullMarked;
