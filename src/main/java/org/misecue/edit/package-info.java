/**
 * What goes into the edit. {@link org.misecue.edit.Captioner} makes captions of a narration that can be read in time, and
 * {@link org.misecue.edit.CaptionFile} writes them as WebVTT or SubRip; {@link org.misecue.edit.Markers} gathers the places
 * in a film that somebody has to find again, and {@code OtioFile}, {@code EdlFile} and {@code CsvFile} write them in
 * formats that are open to all. {@link org.misecue.edit.ShotLog} tells which shot of the list is in which film, by the
 * slates that are called and by what is said. Times are the film's own; frames are counted exactly.
 */
@NullMarked
package org.misecue.edit;

import org.jspecify.annotations.NullMarked;
