package org.misecue.publish;

import java.util.List;
import org.misecue.notice.Note;

/**
 * A text for a description box.
 *
 * @param text plain text, lines ended by line feeds, no longer than the limit
 * @param chapters what the chapter list in it was made of
 * @param leftOut what there was no room for, in the order in which it was dropped: "the method"
 * @param notes what the producer should know before publishing
 */
public record Description(String text, Chapters chapters, List<String> leftOut, List<Note> notes) {}
