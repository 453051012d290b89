package org.misecue.quantity;

/** The blanks within a line: what {@code \h} is in a pattern, for those who look too often to use one. */
public final class Blanks {

    private Blanks() {}

    public static boolean is(char sign) {
        return sign == ' '
                || sign == '\t'
                || sign == '\u180e'
                || sign > 127 && Character.getType(sign) == Character.SPACE_SEPARATOR;
    }

    /** The first place from {@code start} on where no blank stands. */
    public static int end(String text, int start) {
        int end = start;
        while (end < text.length() && is(text.charAt(end))) {
            end++;
        }
        return end;
    }
}
