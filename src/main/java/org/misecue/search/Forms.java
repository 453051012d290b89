package org.misecue.search;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What a word is known by besides itself.
 *
 * @param stem shared by the word's forms: whisk, whisks, whisking
 * @param sound shared by words that sound alike; empty where that tells too little
 */
record Forms(String stem, String sound) {

    /** People say few words, and those over and over. */
    private static final int MOST_KEPT = 50_000;

    private static final Map<String, Forms> KEPT = new ConcurrentHashMap<>();

    static Forms of(String word) {
        Forms known = KEPT.get(word);
        if (known == null) {
            known = new Forms(Stems.of(word), Token.isCommon(word) ? "" : Sounds.of(word));
            if (KEPT.size() < MOST_KEPT) {
                KEPT.put(word, known);
            }
        }
        return known;
    }
}
