package org.misecue.recipe;

import java.util.Map;
import java.util.Set;

/** Small facts of English about the nouns of a kitchen. */
final class Nouns {

    private static final Map<String, String> ODD = Map.of(
            "leaves",
            "leaf",
            "halves",
            "half",
            "loaves",
            "loaf",
            "knives",
            "knife",
            "berries",
            "berry",
            "cookies",
            "cookie",
            "brownies",
            "brownie",
            "pies",
            "pie",
            "radishes",
            "radish");
    private static final Set<String> NO_PLURAL =
            Set.of("hummus", "couscous", "molasses", "asparagus", "citrus", "swiss", "cress");

    private Nouns() {}

    /** The last word of a phrase. */
    static String last(String phrase) {
        String[] words = phrase.strip().split("\\h+", -1);
        return words[words.length - 1];
    }

    /** A phrase with its last word in the singular, lower case untouched: "unwaxed lemons" → "unwaxed lemon". */
    static String singular(String phrase) {
        String last = last(phrase);
        return phrase.strip().substring(0, phrase.strip().length() - last.length()) + one(last);
    }

    private static String one(String word) {
        if (ODD.containsKey(word)) {
            return ODD.getOrDefault(word, word);
        }
        if (word.length() < 4
                || NO_PLURAL.contains(word)
                || word.endsWith("ss")
                || word.endsWith("us")
                || !word.endsWith("s")) {
            return word;
        }
        if (word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        if (word.matches(".*(?:toes|ches|shes|sses|xes|goes)")) {
            return word.substring(0, word.length() - 2);
        }
        return word.substring(0, word.length() - 1);
    }
}
