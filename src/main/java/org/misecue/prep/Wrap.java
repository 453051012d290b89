package org.misecue.prep;

/** An estimate of how a text wraps, on the safe side, for sheets whose places are fixed. */
final class Wrap {

    /** A generous width of a bold letter, as a share of its size. */
    private static final double LETTER = 0.6;

    private Wrap() {}

    /** How many lines a text takes in a width, both in points. */
    static int lines(String text, double width, double size) {
        int letters = (int) Math.max(1, width / (size * LETTER));
        int lines = 1;
        int used = 0;
        for (String word : text.split(" ")) {
            if (used > 0 && used + 1 + word.length() > letters) {
                lines++;
                used = 0;
            }
            used += (used > 0 ? 1 : 0) + word.length();
            lines += (used - 1) / letters;
            used = used > letters ? used % letters : used;
        }
        return lines;
    }
}
