package org.misecue.claims;

import java.util.Set;
import org.misecue.spoken.WordStream;
import org.misecue.spoken.Words;

/** Words between a claim and what governs it: "completely", "a lovely", "hundred percent". */
final class Degrees {

    private static final Set<String> WORDS = Words.set(
            "completely totally entirely fully all also both naturally actually really even obviously just very quite "
                    + "still now always already too absolutely properly happily course of a an the our proper lovely "
                    + "delicious simple easy nice great beautiful little classic wonderful gorgeous hundred percent "
                    + "cent per 100 certainly definitely genuinely basically technically handily luckily "
                    + "essentially accidentally um uh er like sort kind you know well");

    private static final int REACH = 6;

    private Degrees() {}

    static boolean isOne(String word) {
        return WORDS.contains(word);
    }

    /** The index before them, in the same sentence. */
    static int before(WordStream words, int start) {
        int at = start - 1;
        while (at >= 0 && start - at <= REACH && !words.wall(at + 1) && isOne(words.text(at))) {
            at--;
        }
        return at;
    }
}
