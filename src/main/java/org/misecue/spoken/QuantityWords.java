package org.misecue.spoken;

import java.util.Set;

/** Words around quantities that other packages look for too. */
public final class QuantityWords {

    private static final Set<String> PACKINGS =
            Words.set("tin tins can cans jar jars packet packets pack packs sachet sachets carton cartons tub tubs bag "
                    + "bags block blocks bottle bottles punnet punnets envelope envelopes");

    private static final Set<String> SUBJECTS =
            Words.set("i you we they he she it that this who what how people anyone");

    private QuantityWords() {}

    /** The same for a word of a stream: "you can" is no tin. */
    static boolean isPacking(WordStream words, int at) {
        boolean able = words.text(at).equals("can") && SUBJECTS.contains(words.text(at - 1));
        return isPacking(words.text(at)) && !able;
    }

    /** Whether the word is something that food is sold in: "tin", "packet", "block". */
    public static boolean isPacking(String word) {
        return PACKINGS.contains(word);
    }
}
