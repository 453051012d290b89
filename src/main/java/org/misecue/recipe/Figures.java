package org.misecue.recipe;

/** A quick look for figures: most texts hold none, and need no pattern that reads them. */
final class Figures {

    private Figures() {}

    /** Whether digits or signs of fractions stand in the text. */
    static boolean standIn(String text) {
        return text.chars().anyMatch(sign -> Character.isDigit(sign) || "½¼¾".indexOf(sign) >= 0);
    }
}
