/**
 * The index over what was said, the steps and the shots. {@code MomentIndex} is the way in.
 */
@NullMarked
package org.misecue.search;

import org.jspecify.annotations.NullMarked;
