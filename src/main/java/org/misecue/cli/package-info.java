/**
 * The commands. {@code Misecue} is the way in; it knows every other package and is known by none.
 */
@NullMarked
package org.misecue.cli;

import org.jspecify.annotations.NullMarked;
