package org.misecue.quantity;

import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * The signs that what a pattern matches can begin with, and for a pattern without regard to case the first three letters.
 * The pattern must not look behind its own beginning for more than that no word goes on there.
 */
public final class FirstSigns {

    private static final int SIGNS = 128;
    private static final int LETTERS = 26;
    /** So many pairs of letters are there. */
    public static final int PAIRS = LETTERS * LETTERS;
    /** The letters and the space. */
    private static final int KINDS = LETTERS + 1;

    /** Small enough to stay at hand: what falls together with another beginning is tried once in vain. */
    private static final int PLACES_BITS = 10;

    private final boolean[] signs = new boolean[SIGNS];
    private final long[] seen = new long[(1 << PLACES_BITS) / Long.SIZE];

    public static FirstSigns of(Pattern pattern) {
        return new FirstSigns(pattern, "");
    }

    /** Where these signs stand before them that belong to the match. */
    static FirstSigns behind(String before, Pattern pattern) {
        return new FirstSigns(pattern, before);
    }

    private FirstSigns(Pattern pattern, String before) {
        for (char sign = 0; sign < SIGNS; sign++) {
            signs[sign] = mayBegin(pattern, before + sign);
        }
        boolean anyCase = (pattern.flags() & Pattern.CASE_INSENSITIVE) != 0;
        if (!anyCase || mayBegin(pattern, before + "qxz")) {
            Arrays.fill(seen, -1L); // any word may begin it
            return;
        }
        for (int one = 0; one < LETTERS; one++) {
            for (int two = 0; two < KINDS && signs['a' + one]; two++) {
                String pair = before + sign(one) + sign(two);
                if (mayBegin(pattern, pair)) {
                    note(pairKey(one, two));
                    for (int three = 0; three < KINDS && two < LETTERS; three++) {
                        if (mayBegin(pattern, pair + sign(three))) {
                            note(tripleKey(one, two, three));
                        }
                    }
                }
            }
        }
    }

    private static char sign(int kind) {
        return kind < LETTERS ? (char) ('a' + kind) : ' ';
    }

    private static int pairKey(int one, int two) {
        return one * KINDS + two;
    }

    private static int tripleKey(int one, int two, int three) {
        return KINDS * KINDS + pairKey(one, two) * KINDS + three;
    }

    private void note(int key) {
        int place = place(key);
        seen[place / Long.SIZE] |= 1L << place;
    }

    private boolean isNoted(int key) {
        int place = place(key);
        return (seen[place / Long.SIZE] & 1L << place) != 0;
    }

    private static int place(int key) {
        return (key * 0x9E3779B1) >>> (Integer.SIZE - PLACES_BITS);
    }

    /** It matched, or the end was all that stopped it. */
    private static boolean mayBegin(Pattern pattern, String signs) {
        Matcher alone = pattern.matcher(signs);
        if (alone.lookingAt() || alone.hitEnd()) {
            return true;
        }
        Matcher behindWord = pattern.matcher("a" + signs)
                .region(1, signs.length() + 1)
                .useTransparentBounds(true)
                .useAnchoringBounds(false);
        return behindWord.lookingAt() || behindWord.hitEnd();
    }

    /** The number of the two letters from a to z that stand at a place, in any case; below 0 where none or one stands. */
    public static int pair(String text, int at) {
        int one = kind(text, at);
        int two = kind(text, at + 1);
        return one < 0 || one == LETTERS || two < 0 || two == LETTERS ? -1 : one * LETTERS + two;
    }

    /** Whether a pattern may begin with the two letters of such a number. */
    public static boolean mayBegin(Pattern pattern, int pair) {
        return mayBegin(pattern, "" + sign(pair / LETTERS) + sign(pair % LETTERS));
    }

    /** Whether none of them is a sign of ASCII but a letter or a figure. */
    public boolean areOfWords() {
        return IntStream.range(0, SIGNS).noneMatch(sign -> signs[sign] && !Character.isLetterOrDigit(sign));
    }

    /** Whether the pattern may match at a place of a text that something stands at. */
    public boolean mayStandAt(String text, int at) {
        char sign = text.charAt(at);
        if (sign >= SIGNS) {
            return true;
        }
        if (!signs[sign]) {
            return false;
        }
        int one = kind(text, at);
        int two = kind(text, at + 1);
        if (one < 0 || one == LETTERS || two < 0) {
            return true;
        }
        int three = two == LETTERS ? -1 : kind(text, at + 2);
        return isNoted(three < 0 ? pairKey(one, two) : tripleKey(one, two, three));
    }

    /** From 0 for a to 25 for z, 26 for a space; below 0 for any other sign. */
    private static int kind(String text, int at) {
        if (at >= text.length()) {
            return -1;
        }
        char sign = text.charAt(at);
        int letter = (sign | 0x20) - 'a';
        return sign == ' ' ? LETTERS : letter < LETTERS ? letter : -1;
    }
}
