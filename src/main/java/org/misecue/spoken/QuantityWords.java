package org.misecue.spoken;

import java.util.Set;

/** Words around quantities that other packages look for too. */
public final class QuantityWords {

    private static final Set<String> PACKINGS =
            Words.set("tin tins can cans jar jars packet packets pack packs sachet sachets carton cartons tub tubs bag "
                    + "bags block blocks bottle bottles punnet punnets envelope envelopes brick bricks");

    private static final Set<String> SUBJECTS =
            Words.set("i you we they he she it that this who what how people anyone");

    /** Packs whose words also mean other things: a size says that they are packs. */
    private static final Set<String> SIZED = Words.set("bar bars pot pots box boxes tube tubes slab slabs");

    private QuantityWords() {}

    /** The same for a word that has a size beside it: "you can" is no tin, a bar may be one of chocolate. */
    public static boolean isPacking(WordStream words, int at) {
        boolean able = words.text(at).equals("can")
                && (SUBJECTS.contains(words.text(at - 1)) || SUBJECTS.contains(words.text(at + 1)));
        return (isPacking(words.text(at)) && !able) || SIZED.contains(words.text(at));
    }

    /** Whether the word is something that food is sold in: "tin", "packet", "block". */
    public static boolean isPacking(String word) {
        return PACKINGS.contains(word);
    }
}
