/**
 * A recipe at another size. {@link org.misecue.scale.Scaler} is the way in: it takes a {@link org.misecue.scale.Batch}
 * (a factor, a yield, a tin, or what is left of one ingredient) and gives a {@link org.misecue.scale.ScaledRecipe}. It
 * scales exactly first, then rounds as a person weighs by {@link org.misecue.scale.ScaleRules}, and says what it had to
 * bend.
 */
@NullMarked
package org.misecue.scale;

import org.jspecify.annotations.NullMarked;
