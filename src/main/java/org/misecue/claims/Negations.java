package org.misecue.claims;

import java.util.Set;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** Words that deny what follows them. */
final class Negations {

    private static final Set<String> DENYING = Words.set(
            "not isn't aren't wasn't weren't never nor hardly cannot can't won't don't doesn't ain't nothing");

    private static final int REACH = 7;

    private Negations() {}

    static boolean isOne(String word) {
        return DENYING.contains(word);
    }

    /** Whether one is said in the sentence, at the index or before it. */
    static boolean endsWithin(WordStream words, int end) {
        for (int at = end; at > end - REACH && at >= 0 && !words.wall(at + 1); at--) {
            if (isOne(words.text(at))) {
                return true;
            }
        }
        return false;
    }
}
