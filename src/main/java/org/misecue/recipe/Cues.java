package org.misecue.recipe;

import java.util.List;
import java.util.Locale;

/**
 * Plain words that a pattern cannot do without. Most texts hold none of them, and a search for words is many times as
 * fast as a pattern that is tried at every letter.
 *
 * @param words in lower case
 */
record Cues(List<String> words) {

    static Cues of(String... words) {
        return new Cues(List.of(words));
    }

    /** Whether the text holds one of the words, in any case and anywhere. */
    boolean standIn(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        for (String word : words) {
            if (lower.contains(word)) {
                return true;
            }
        }
        return false;
    }
}
