/**
 * What was said and when. {@code NarrationReader} is the way in; it reads WebVTT, SubRip, recogniser JSON and
 * {@code [m:ss]} text into a {@link org.misecue.narration.Narration}. A damaged cue is left out with a note that names
 * its line.
 */
@NullMarked
package org.misecue.narration;

import org.jspecify.annotations.NullMarked;
