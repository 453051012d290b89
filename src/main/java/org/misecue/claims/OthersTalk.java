package org.misecue.claims;

import org.misecue.spoken.Phrases;
import org.misecue.spoken.WordStream;

/** Whether what is said is told of other people's cakes or of other days. */
final class OthersTalk {

    private static final int WINDOW = 8;

    private final WordStream words;
    private final Phrases phrases;

    OthersTalk(WordStream words) {
        this.words = words;
        this.phrases = new Phrases(words);
    }

    /** By what stands before a phrase. */
    boolean leadsTo(int start) {
        int from = windowStart(start);
        return phrases.within(Phrases.Kind.OTHER_TIME, from, start)
                || (phrases.within(Phrases.Kind.OTHER_PEOPLE, from, start) && !isOwnAgain(from, start));
    }

    /** "my mum loves it because this is dairy free". */
    private boolean isOwnAgain(int from, int start) {
        for (int at = from; at < start; at++) {
            if (words.text(at).matches("because|this|it|but")) {
                return true;
            }
        }
        return false;
    }

    /** Where the clause begins that leads to the index. */
    int windowStart(int index) {
        int at = index;
        while (at > 0
                && index - at < WINDOW
                && !words.wall(at)
                && !words.text(at).matches("but|anyway|because|so")) {
            at--;
        }
        return at;
    }

    /** By a subject of {@code [from, to]}. */
    boolean isIn(int from, int to) {
        return phrases.within(Phrases.Kind.OTHER_PEOPLE, from, to + 1)
                || phrases.within(Phrases.Kind.OTHER_TIME, from, to + 1);
    }
}
