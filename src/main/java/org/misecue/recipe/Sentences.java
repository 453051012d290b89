package org.misecue.recipe;

/** Where sentences begin and end. A stop between figures, as in "2.5 cm", ends none. */
final class Sentences {

    private Sentences() {}

    /** The sentence that a place of a text lies in. */
    static String around(String text, int at) {
        return text.substring(start(text, at), end(text, at));
    }

    static int start(String text, int at) {
        for (int place = Math.min(at, text.length()) - 1; place > 0; place--) {
            if (ends(text, place)) {
                return place + 1;
            }
        }
        return 0;
    }

    static int end(String text, int at) {
        for (int place = at; place < text.length(); place++) {
            if (ends(text, place)) {
                return place + 1;
            }
        }
        return text.length();
    }

    private static boolean ends(String text, int at) {
        char sign = text.charAt(at);
        boolean stop = sign == '.' || sign == '!' || sign == '?' || sign == '\n';
        return stop && (at + 1 == text.length() || Character.isWhitespace(text.charAt(at + 1)));
    }
}
