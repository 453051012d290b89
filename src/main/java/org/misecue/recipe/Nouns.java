package org.misecue.recipe;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.misecue.quantity.Blanks;

/** Small facts of English about the nouns of a kitchen. */
final class Nouns {

    private static final Map<String, String> ODD = Map.ofEntries(
            Map.entry("leaves", "leaf"),
            Map.entry("halves", "half"),
            Map.entry("loaves", "loaf"),
            Map.entry("knives", "knife"),
            Map.entry("berries", "berry"),
            Map.entry("cookies", "cookie"),
            Map.entry("brownies", "brownie"),
            Map.entry("blondies", "blondie"),
            Map.entry("naartjies", "naartjie"),
            Map.entry("pies", "pie"),
            Map.entry("radishes", "radish"));
    private static final Set<String> NO_PLURAL =
            Set.of("hummus", "couscous", "molasses", "asparagus", "citrus", "swiss", "cress");

    private static final List<String> LONG_PLURALS = List.of("toes", "ches", "shes", "sses", "xes", "goes");

    private Nouns() {}

    /** The last word of a phrase. */
    static String last(String phrase) {
        String words = phrase.strip();
        int start = words.length();
        while (start > 0 && !Blanks.is(words.charAt(start - 1))) {
            start--;
        }
        return words.substring(start);
    }

    /** A phrase with its last word in the singular, lower case untouched: "unwaxed lemons" → "unwaxed lemon". */
    static String singular(String phrase) {
        String words = phrase.strip();
        String last = last(words);
        return words.substring(0, words.length() - last.length()) + one(last);
    }

    /** A single word in the singular. */
    static String one(String word) {
        if (!word.endsWith("s")) {
            return word;
        }
        String odd = ODD.get(word);
        if (odd != null) {
            return odd;
        }
        if (word.length() < 4 || NO_PLURAL.contains(word) || word.endsWith("ss") || word.endsWith("us")) {
            return word;
        }
        if (word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        for (String plural : LONG_PLURALS) {
            if (word.endsWith(plural)) {
                return word.substring(0, word.length() - 2);
            }
        }
        return word.substring(0, word.length() - 1);
    }
}
