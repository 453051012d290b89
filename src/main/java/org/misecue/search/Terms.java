package org.misecue.search;

import java.util.ArrayList;
import java.util.List;

/**
 * The terms under which a word is indexed. All stand in one field, at the word's position, so that a phrase may mix them;
 * a sign before it tells a stem, a sound and two words written as one from a plain word.
 */
final class Terms {

    static final String FIELD = "said";

    private static final String STEM = "~";
    private static final String SOUND = "#";
    private static final String JOINED = "+";

    private Terms() {}

    static String stem(Token token) {
        return STEM + token.stem();
    }

    static String sound(Token token) {
        return SOUND + token.sound();
    }

    static String joined(String word) {
        return JOINED + word;
    }

    /** Whether a term is a word as somebody said it. */
    static boolean isPlain(String term) {
        return !term.startsWith(STEM) && !term.startsWith(SOUND) && !term.startsWith(JOINED);
    }

    /** For each token its terms; the word itself comes first. */
    static List<List<String>> of(List<Token> tokens) {
        List<List<String>> positions = new ArrayList<>();
        for (int i = 0; i < tokens.size(); i++) {
            Token token = tokens.get(i);
            List<String> terms = new ArrayList<>(List.of(token.word(), stem(token)));
            if (!token.sound().isEmpty()) {
                terms.add(sound(token));
            }
            if (i + 1 < tokens.size()) {
                terms.add(joined(token.word() + tokens.get(i + 1).word()));
            }
            positions.add(terms);
        }
        return positions;
    }
}
