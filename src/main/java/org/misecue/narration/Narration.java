package org.misecue.narration;

import java.util.List;
import org.misecue.notice.Note;

/**
 * One narration file.
 *
 * @param source the file's name relative to the episode, such as {@code narration/main.vtt}
 * @param cues in time order
 * @param notes cues that were left out or mended, each with its line
 * @param mended words that somebody heard otherwise than the recogniser, already put in
 */
public record Narration(String source, List<Cue> cues, List<Note> notes, List<Mend> mended) {

    /** As its file has it. */
    public Narration(String source, List<Cue> cues, List<Note> notes) {
        this(source, cues, notes, List.of());
    }
}
