/**
 * What the camera files hold. The ways in: {@link org.misecue.footage.Footage#probe} tells length, tracks, frame rate
 * and time code; {@link org.misecue.footage.Still} takes one frame as PNG; {@link org.misecue.footage.Clip} cuts a
 * moment out as a film of its own; {@link org.misecue.footage.SoundCheck} hears how loud a film is and where it is silent;
 * {@link org.misecue.footage.FilmSubtitles} reads the subtitles inside; {@link org.misecue.footage.ContactSheets} draws
 * sheets of small pictures; {@link org.misecue.footage.ClockOfDay} and {@link org.misecue.footage.CommonSound} tell which
 * films ran together;
 * {@link org.misecue.footage.Timecode} counts frames as editing systems do.
 *
 * <p>A film's clock starts at zero with its first frame, as does the narration's. Times are half-open:
 * {@code [from, to)}. The work is done by FFmpeg's libraries, which are loaded when the first film is opened. Inside:
 * {@code Reel} opens a film, {@code Decoder} reads one track's frames, {@code Playhead} finds the one on screen,
 * {@code Filter} turns and trims, {@code Encoder} and {@code FilmWriter} write; {@code Lane} is that whole way for one
 * track of a clip. What both heard is found by {@code Levels} of the whole film ({@code Shift} holds two of them against each
 * other), then by {@code Passage} at a dozen {@code Spot}s, through which {@code Fit} draws a line.
 */
@NullMarked
package org.misecue.footage;

import org.jspecify.annotations.NullMarked;
