package org.misecue.publish;

/**
 * Makes a text of somebody's recipe fit for one line of a description box: no control characters, no line breaks, no
 * characters that turn the reading direction round, nothing that a page could take for markup.
 */
final class SafeText {

    private SafeText() {}

    static String line(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().forEach(point -> safe.appendCodePoint(replaced(point)));
        return safe.toString().replace("\0", "").replaceAll(" {2,}", " ").strip();
    }

    /** The character itself, a harmless look-alike, a space, or NUL for one to leave out. */
    private static int replaced(int point) {
        if (point == '<') {
            return '‹';
        }
        if (point == '>') {
            return '›';
        }
        if (turnsDirection(point)) {
            return 0;
        }
        return switch (Character.getType(point)) {
            case Character.CONTROL -> Character.isWhitespace(point) ? ' ' : 0;
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SPACE_SEPARATOR -> ' ';
            case Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED -> 0;
            default -> point == 0xFEFF ? 0 : point;
        };
    }

    /** Explicit embeddings, overrides and isolates; Arabic and Hebrew letters read right without them. */
    private static boolean turnsDirection(int point) {
        return point >= 0x202A && point <= 0x202E || point >= 0x2066 && point <= 0x2069;
    }
}
