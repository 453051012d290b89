package org.misecue.spoken;

import java.util.Set;

/** Words around quantities that other packages look for too. */
public final class QuantityWords {

    private static final Set<String> PACKINGS =
            Words.set("tin tins can cans jar jars packet packets pack packs sachet sachets carton cartons tub tubs bag "
                    + "bags block blocks bottle bottles punnet punnets envelope envelopes");

    private QuantityWords() {}

    /** Whether the word is something that food is sold in: "tin", "packet", "block". */
    public static boolean isPacking(String word) {
        return PACKINGS.contains(word);
    }
}
