/**
 * What the camera files hold: streams, frames, moments cut out. {@code Footage} is the way in; it needs no system package.
 */
@NullMarked
package org.misecue.footage;

import org.jspecify.annotations.NullMarked;
