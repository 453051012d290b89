/**
 * One episode with all that is worked out from it. {@link org.misecue.worktop.Worktop} is the way in: it asks each part of
 * the job once, and only when somebody wants its answer. Both faces of the program, the commands and the desk, stand at
 * it, so that they can never tell two different things; it prints nothing itself.
 */
@NullMarked
package org.misecue.worktop;

import org.jspecify.annotations.NullMarked;
