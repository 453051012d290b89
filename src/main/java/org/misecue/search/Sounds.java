package org.misecue.search;

import org.apache.commons.codec.language.DoubleMetaphone;

/** How words sound, by double metaphone: recognisers write flower for flour, bred for bread, east for yeast. */
final class Sounds {

    /** Shorter words sound like too many others. */
    private static final int LEAST_LETTERS = 4;

    private static final int LEAST_CODE = 2;
    private static final int LONGEST_CODE = 8;

    private static final DoubleMetaphone METAPHONE = new DoubleMetaphone();

    static {
        METAPHONE.setMaxCodeLen(LONGEST_CODE);
    }

    private Sounds() {}

    /** Empty where sound tells too little. */
    static String of(String word) {
        if (word.length() < LEAST_LETTERS || !Character.isLetter(word.charAt(0))) {
            return "";
        }
        boolean severalOfIt = word.endsWith("s") && !word.endsWith("ss");
        String code = METAPHONE.doubleMetaphone(severalOfIt ? word.substring(0, word.length() - 1) : word);
        return code == null || code.length() < LEAST_CODE ? "" : code;
    }
}
