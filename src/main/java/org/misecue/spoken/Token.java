package org.misecue.spoken;

import java.time.Duration;

/**
 * One word of the stream, in the form that the grammar reads: lower case, no punctuation, "225g" in two tokens.
 *
 * @param text the normal form
 * @param source the narration file
 * @param cue the index of the cue in its narration
 * @param word the index of the word in its cue, for quoting
 * @param at when it begins
 * @param border whether a sentence, a turn of another speaker or a long pause ends just before it: a hint, never a wall
 * @param wall whether it is a sentence or a turn that ends: no number goes on across it
 */
public record Token(String text, String source, int cue, int word, Duration at, boolean border, boolean wall) {

    public boolean is(String other) {
        return text.equals(other);
    }
}
