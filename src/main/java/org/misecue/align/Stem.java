package org.misecue.align;

import java.util.List;
import org.misecue.spoken.Words;

/** What forms of a word share: "baked", "baking" and "bake" are one word here; the form need be no English. */
public final class Stem {

    private static final List<String> ENDINGS = List.of("ing", "ed", "es", "e");
    private static final int SHORTEST = 3;

    private Stem() {}

    /** @param word in small letters */
    public static String of(String word) {
        String one = Words.singular(word);
        for (String ending : ENDINGS) {
            if (one.length() - ending.length() >= SHORTEST && one.endsWith(ending)) {
                return one.substring(0, one.length() - ending.length());
            }
        }
        return one;
    }
}
