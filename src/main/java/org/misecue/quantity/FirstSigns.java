package org.misecue.quantity;

import java.util.BitSet;
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

    private final boolean[] signs = new boolean[SIGNS];
    private final BitSet pairs = new BitSet(PAIRS);
    private final BitSet lone = new BitSet(LETTERS);
    private final BitSet lonePairs = new BitSet(PAIRS);
    private final long[] triples = new long[(PAIRS * LETTERS + Long.SIZE - 1) / Long.SIZE];

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
        for (int one = 0; one < LETTERS; one++) {
            lone.set(one, !anyCase || signs['a' + one] && mayBegin(pattern, before + (char) ('a' + one) + ' '));
            for (int two = 0; two < LETTERS && signs['a' + one]; two++) {
                pairs.set(
                        one * LETTERS + two,
                        !anyCase || mayBegin(pattern, before + (char) ('a' + one) + (char) ('a' + two)));
            }
        }
        boolean any = !anyCase || pairs.cardinality() == PAIRS;
        for (int pair = pairs.nextSetBit(0); pair >= 0; pair = pairs.nextSetBit(pair + 1)) {
            String two = before + (char) ('a' + pair / LETTERS) + (char) ('a' + pair % LETTERS);
            lonePairs.set(pair, any || mayBegin(pattern, two + ' '));
            for (int three = 0; three < LETTERS; three++) {
                if (any || mayBegin(pattern, two + (char) ('a' + three))) {
                    int triple = pair * LETTERS + three;
                    triples[triple / Long.SIZE] |= 1L << triple;
                }
            }
        }
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
        int one = letter(text, at);
        int two = letter(text, at + 1);
        return one < 0 || two < 0 ? -1 : one * LETTERS + two;
    }

    public boolean mayBeginWith(int pair) {
        return pairs.get(pair);
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
        int one = letter(text, at);
        if (one < 0) {
            return true;
        }
        int two = letter(text, at + 1);
        if (two < 0) {
            return !isSpace(text, at + 1) || lone.get(one);
        }
        int three = letter(text, at + 2);
        int pair = one * LETTERS + two;
        if (three < 0) {
            return isSpace(text, at + 2) ? lonePairs.get(pair) : pairs.get(pair);
        }
        int triple = pair * LETTERS + three;
        return (triples[triple / Long.SIZE] & 1L << triple) != 0;
    }

    private static boolean isSpace(String text, int at) {
        return at < text.length() && text.charAt(at) == ' ';
    }

    /** From 0 for a to 25 for z; below 0 for any other sign. */
    private static int letter(String text, int at) {
        int letter = at < text.length() ? (text.charAt(at) | 0x20) - 'a' : -1;
        return letter < LETTERS ? letter : -1;
    }
}
