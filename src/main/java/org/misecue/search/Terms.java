package org.misecue.search;

/**
 * The terms under which a word is indexed. All stand in one field, at the word's position, so that a phrase may mix them;
 * a sign before it tells a stem and a sound from a plain word.
 */
final class Terms {

    static final String FIELD = "said";
    static final char STEM = '~';
    static final char SOUND = '#';

    private Terms() {}

    static String stem(Token token) {
        return STEM + token.stem();
    }

    static String sound(Token token) {
        return SOUND + token.sound();
    }

    /** Whether a term is a word as somebody said it. */
    static boolean isPlain(String term) {
        return term.charAt(0) != STEM && term.charAt(0) != SOUND;
    }
}
