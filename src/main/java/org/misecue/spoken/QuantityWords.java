package org.misecue.spoken;

/** Words around quantities that other packages look for too. */
public final class QuantityWords {

    private QuantityWords() {}

    /** Whether the word is something that food is sold in: "tin", "packet", "block". */
    public static boolean isPacking(String word) {
        return QuantityGrammar.isPacking(word);
    }
}
