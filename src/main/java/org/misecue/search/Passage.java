package org.misecue.search;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
 * @param topics what it is about, as far as that is known
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
        List<SaidAmount> amounts,
        Set<Topic> topics) {

    public enum Kind {
        NARRATION,
        STEP,
        SHOT,
        /** Writing in the picture; its source is the film. */
        SHOWN,
        /** A line of the list of ingredients: only for what it is about, its words stand in steps. */
        INGREDIENT
    }

    public Passage about(Set<Topic> known) {
        return new Passage(kind, source, start, end, text, step, speaker, words, amounts, Set.copyOf(known));
    }

    /** What stood in the picture for a while, on the film's clock. */
    public static Passage shown(String text, int step, String film, Duration start, Duration end) {
        return new Passage(Kind.SHOWN, film, start, end, text, step, Optional.empty(), List.of(), List.of(), Set.of());
    }

    /** An ingredient as the recipe lists it, shown at the time when it is used. */
    public static Passage ingredient(String text, int step, String source, Duration start, Duration end) {
        return new Passage(
                Kind.INGREDIENT, source, start, end, text, step, Optional.empty(), List.of(), List.of(), Set.of());
    }

    public static Passage of(String source, Cue cue, int step) {
        return of(source, cue, step, List.of());
    }

    public static Passage of(String source, Cue cue, int step, List<SaidAmount> amounts) {
        return new Passage(
                Kind.NARRATION,
                source,
                cue.start(),
                cue.end(),
                cue.text(),
                step,
                cue.speaker(),
                cue.words(),
                amounts,
                Set.of());
    }

    /** A step, shown at the time when it is on. */
    public static Passage step(int number, String text, String source, Duration start, Duration end) {
        return new Passage(
                Kind.STEP, source, start, end, text, number, Optional.empty(), List.of(), List.of(), Set.of());
    }

    /** A shot, shown at the time when its step is on. */
    public static Passage shot(int step, String text, String source, Duration start, Duration end) {
        return new Passage(Kind.SHOT, source, start, end, text, step, Optional.empty(), List.of(), List.of(), Set.of());
    }
}
