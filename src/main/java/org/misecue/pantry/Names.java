package org.misecue.pantry;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Names made comparable: words in lower case, without accents, plurals and numbers. */
final class Names {

    private static final String APOSTROPHES = "'’‘`";
    private static final List<String> LONG_PLURALS = List.of("che", "she", "xe", "sse", "oe");

    private Names() {}

    /** The words of a text as they are compared; numbers that only count ("2", "½") are left out. */
    static List<String> words(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        String plain = isAscii(lower) ? lower : Normalizer.normalize(lower, Normalizer.Form.NFD);
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        for (int at = 0; at < plain.length(); at++) {
            char sign = plain.charAt(at);
            if (sign == '%' || Character.isLetter(sign) || isNumber(sign)) {
                word.append(sign);
            } else if (!isAccent(sign) && APOSTROPHES.indexOf(sign) < 0) {
                end(word, words);
            }
        }
        end(word, words);
        return words;
    }

    private static boolean isAscii(String text) {
        for (int at = 0; at < text.length(); at++) {
            if (text.charAt(at) > 127) {
                return false;
            }
        }
        return true;
    }

    private static void end(StringBuilder letters, List<String> words) {
        String word = letters.toString();
        letters.setLength(0);
        if (!word.isEmpty() && (Character.isLetter(word.charAt(0)) || word.startsWith("0") || word.endsWith("%"))) {
            words.add(stem(word));
        }
    }

    private static boolean isNumber(char sign) {
        int type = Character.getType(sign);
        return type == Character.DECIMAL_DIGIT_NUMBER
                || type == Character.LETTER_NUMBER
                || type == Character.OTHER_NUMBER;
    }

    /** The normal form sets accents apart from their letters. */
    private static boolean isAccent(char sign) {
        int type = Character.getType(sign);
        return type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK
                || type == Character.ENCLOSING_MARK;
    }

    /**
     * One form for singular and plural. It need be no English word, only the same for both: "berry" and "berries",
     * "half" and "halves", "clove" and "cloves".
     */
    private static String stem(String word) {
        String stem = word;
        if (stem.length() > 3 && stem.endsWith("s") && !stem.endsWith("ss") && !stem.endsWith("us")) {
            stem = stem.substring(0, stem.length() - 1);
        }
        for (String end : LONG_PLURALS) {
            if (stem.endsWith(end)) {
                return stem.substring(0, stem.length() - 1);
            }
        }
        if (stem.endsWith("ie") && stem.length() > 3) {
            return stem.substring(0, stem.length() - 2) + "y";
        }
        return stem.endsWith("ve") ? stem.substring(0, stem.length() - 2) + "f" : stem;
    }
}
