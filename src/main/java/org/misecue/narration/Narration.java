package org.misecue.narration;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
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

    /** With one more, behind those it has. */
    public Narration with(Note note) {
        return new Narration(
                source, cues, Stream.concat(notes.stream(), Stream.of(note)).toList(), mended);
    }

    /** When its last word has been said. */
    public Duration end() {
        return cues.stream().map(Cue::end).max(Comparator.naturalOrder()).orElse(Duration.ZERO);
    }

    /** When its first word is said. */
    public Duration start() {
        return cues.isEmpty() ? Duration.ZERO : cues.get(0).start();
    }
}
