/**
 * A recipe at another size: by factor, by yield, by tin. {@code Scaler} is the way in; it scales exactly first, then
 * rounds as a person weighs, and says what it had to bend.
 */
@NullMarked
package org.misecue.scale;

import org.jspecify.annotations.NullMarked;
