package org.misecue.spoken;

import java.util.Set;

/** What may stand between a number and its unit: "two level tablespoons", "half of a cup", "thirty odd grams". */
final class BetweenWords {

    private static final Set<String> ARTICLES = Set.of("a", "an", "another", "one", "1");
    private static final Set<String> SIZES = Words.set(
            "level other heaped heaping rounded scant generous good big small large little full whole flat more "
                    + "extra single tiny fat decent proper nice other us american australian aussie metric standard imperial");
    private static final Set<String> ODD = Set.of("odd", "something", "ish");
    private static final int MOST_SIZES = 3;

    private final WordStream words;

    BetweenWords(WordStream words) {
        this.words = words;
    }

    static boolean isArticle(String word) {
        return ARTICLES.contains(word);
    }

    int afterSizes(int index) {
        int at = index;
        while (SIZES.contains(words.text(at)) && at - index < MOST_SIZES) {
            at++;
        }
        return at;
    }

    /** "thirty odd grams", "eighty something grams". */
    int afterOdd(int index) {
        return ODD.contains(words.text(index)) ? index + 1 : index;
    }

    /** "half a", "half of a", "a quarter of a", "half of one". */
    int afterPartOf(int index) {
        int at = words.text(index).equals("of") ? index + 1 : index;
        return isArticle(words.text(at)) ? at + 1 : index;
    }
}
