package org.misecue.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line in which the allergens are marked, before it has a form. The marks are control characters, which no safe text
 * holds.
 */
record Marked(String text) {

    private static final char OPEN = '\u0001';
    private static final char CLOSE = '\u0002';
    private static final Pattern PIECE = Pattern.compile(OPEN + "([^" + CLOSE + "]*)" + CLOSE + "|[^" + OPEN + "]+");

    static String mark(String word) {
        return OPEN + word + CLOSE;
    }

    Marked behind(String words) {
        return words.isEmpty() ? this : new Marked(words + " " + text);
    }

    String with(Emphasis emphasis) {
        StringBuilder line = new StringBuilder();
        Matcher matcher = PIECE.matcher(text);
        while (matcher.find()) {
            line.append(matcher.group(1) == null ? matcher.group() : emphasis.of(matcher.group(1)));
        }
        return line.toString();
    }

    /** The line in pieces, each an allergen or not. */
    List<Map<String, Object>> pieces() {
        List<Map<String, Object>> pieces = new ArrayList<>();
        Matcher matcher = PIECE.matcher(text);
        while (matcher.find()) {
            boolean allergen = matcher.group(1) != null;
            pieces.add(Map.of("text", allergen ? matcher.group(1) : matcher.group(), "allergen", allergen));
        }
        return pieces;
    }
}
