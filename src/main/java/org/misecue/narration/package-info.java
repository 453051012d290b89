/**
 * What was said and when. {@link org.misecue.narration.NarrationReader} is the way in; it reads WebVTT, SubRip, TTML, recogniser
 * JSON and {@code [m:ss]} text into a {@link org.misecue.narration.Narration}. A damaged cue is left out with a note that
 * names its line. {@link org.misecue.narration.Shift} puts one on another clock, and {@link
 * org.misecue.narration.TimedText} makes one of texts from elsewhere. {@link org.misecue.narration.Clock} shows times to people.
 *
 * <p>Inside, {@code NarrationText} makes text of bytes, one {@code CueFormat} per format puts cues on the {@code
 * CueSheet}, and the sheet orders and ends them and gives each word its time.
 */
@NullMarked
package org.misecue.narration;

import org.jspecify.annotations.NullMarked;
