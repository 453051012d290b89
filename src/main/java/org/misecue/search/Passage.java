package org.misecue.search;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.misecue.narration.Cue;
import org.misecue.narration.Word;

/**
 * What can be found: a cue of the narration, a step of the method or a shot.
 *
 * @param source the file it stands in, relative to the episode
 * @param start on the source's clock; where a step or shot has no time, zero
 * @param step the step that is on, from 1; 0 where none is known
 * @param words with times where they are known, otherwise empty
 * @param amounts that are said in it
 */
public record Passage(
        Kind kind,
        String source,
        Duration start,
        Duration end,
        String text,
        int step,
        Optional<String> speaker,
        List<Word> words,
        List<SaidAmount> amounts) {

    public enum Kind {
        NARRATION,
        STEP,
        SHOT
    }

    public static Passage of(String source, Cue cue, int step) {
        return of(source, cue, step, List.of());
    }

    public static Passage of(String source, Cue cue, int step, List<SaidAmount> amounts) {
        return new Passage(
                Kind.NARRATION, source, cue.start(), cue.end(), cue.text(), step, cue.speaker(), cue.words(), amounts);
    }

    /** A step, shown at the time when it is on. */
    public static Passage step(int number, String text, String source, Duration start, Duration end) {
        return new Passage(Kind.STEP, source, start, end, text, number, Optional.empty(), List.of(), List.of());
    }

    /** A shot, shown at the time when its step is on. */
    public static Passage shot(int step, String text, String source, Duration start, Duration end) {
        return new Passage(Kind.SHOT, source, start, end, text, step, Optional.empty(), List.of(), List.of());
    }
}
