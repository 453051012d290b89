package org.misecue.search;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/**
 * A moment that was found.
 *
 * @param episode the folder; relative to the archive where that was searched
 * @param source the file, relative to the episode
 * @param at when the first matching word begins, on the source's clock
 * @param end when the passage ends
 * @param quote the passage, or the part of a long one around the match
 * @param marks the matching words in the quote, in order
 * @param step the step that is on, from 1; 0 where none is known
 * @param score higher is better; only comparable within one result
 */
public record Hit(
        Path episode,
        Passage.Kind kind,
        String source,
        Duration at,
        Duration end,
        String quote,
        List<Mark> marks,
        int step,
        Optional<String> speaker,
        double score) {

    Hit scoring(double other) {
        return new Hit(episode, kind, source, at, end, quote, marks, step, speaker, other);
    }

    /** Its folder with {@code /} between the parts. */
    public String episodeName() {
        return episode.toString().replace('\\', '/');
    }

    /** Characters {@code [from, to)} of the quote. */
    public record Mark(int from, int to) {}
}
