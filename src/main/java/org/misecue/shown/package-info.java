/**
 * Text in the picture, read from frames that were chosen because the picture changed: what a viewer reads and when. A
 * {@link org.misecue.shown.Card} is one text with its first and last moment.
 */
@NullMarked
package org.misecue.shown;

import org.jspecify.annotations.NullMarked;
