package org.misecue.narration;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** A narration on another clock. What was mended in it stays on the file's own. */
public final class Shift {

    private Shift() {}

    /**
     * @param offset what is added to each time; what then ends at 0:00 or before is left out, with a note, and what ends after
     *     it begins at 0:00 at the earliest
     */
    public static Narration by(Narration narration, Duration offset) {
        if (offset.isZero()) {
            return narration;
        }
        List<Cue> cues = narration.cues().stream()
                .filter(cue -> cue.end().plus(offset).compareTo(Duration.ZERO) > 0)
                .map(cue -> moved(cue, offset))
                .toList();
        int lost = narration.cues().size() - cues.size();
        List<Note> notes = new ArrayList<>(narration.notes());
        if (lost > 0) {
            notes.add(new Note(
                    Place.of(narration.source()),
                    "with its offset of %s %d of its %d cues end before the film begins and were left out; correct the offset in episode.yaml"
                            .formatted(
                                    Clock.signed(offset), lost, narration.cues().size())));
        }
        return new Narration(narration.source(), cues, List.copyOf(notes), narration.mended());
    }

    private static Cue moved(Cue cue, Duration offset) {
        return new Cue(
                moved(cue.start(), offset),
                cue.end().plus(offset),
                cue.speaker(),
                cue.text(),
                cue.words().stream()
                        .map(word -> new Word(word.text(), moved(word.at(), offset)))
                        .toList());
    }

    private static Duration moved(Duration at, Duration offset) {
        Duration moved = at.plus(offset);
        return moved.isNegative() ? Duration.ZERO : moved;
    }
}
