package org.misecue.recipe;

/** A quick look for figures: most texts hold none, and need no pattern that reads them. */
final class Figures {

    private Figures() {}

    /** Whether digits or signs of fractions stand in the text. */
    static boolean standIn(String text) {
        for (int at = 0; at < text.length(); at++) {
            char sign = text.charAt(at);
            if (Character.isDigit(sign) || sign == '½' || sign == '¼' || sign == '¾') {
                return true;
            }
        }
        return false;
    }
}
