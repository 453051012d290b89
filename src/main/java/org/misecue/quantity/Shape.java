package org.misecue.quantity;

import java.util.BitSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A pattern together with the signs that what it matches can begin with, by itself or behind a blank: a glance at them
 * spares most tries. The pattern must not look behind its own beginning.
 */
final class Shape {

    private static final int SIGNS = 128;

    private final Pattern pattern;
    private final Beginning first;
    private final Beginning behindBlank;
    private final boolean atEnd;

    private Shape(Pattern pattern) {
        this.pattern = pattern;
        this.atEnd = pattern.matcher("").lookingAt();
        this.first = new Beginning(pattern, "");
        this.behindBlank = new Beginning(pattern, " ");
    }

    /** As it is written. */
    static Shape of(String regex) {
        return new Shape(Pattern.compile(regex));
    }

    /** In upper and lower case. */
    static Shape inAnyCase(String regex) {
        return new Shape(Pattern.compile(regex, Pattern.CASE_INSENSITIVE));
    }

    Pattern pattern() {
        return pattern;
    }

    /** Whether the pattern may match at this place of a text. */
    boolean mayStandAt(String text, int at) {
        if (at == text.length()) {
            return atEnd;
        }
        return text.charAt(at) == ' ' && at + 1 < text.length()
                ? behindBlank.mayStandAt(text, at + 1)
                : first.mayStandAt(text, at);
    }

    /** The signs that may come first, and for a pattern without regard to case the three letters. */
    private static final class Beginning {

        private static final int LETTERS = 26;

        private final BitSet signs = new BitSet(SIGNS);
        private final BitSet pairs = new BitSet(LETTERS * LETTERS);
        private final BitSet triples = new BitSet(LETTERS * LETTERS * LETTERS);

        Beginning(Pattern pattern, String before) {
            for (char sign = 0; sign < SIGNS; sign++) {
                signs.set(sign, mayBegin(pattern, before + sign));
            }
            boolean anyCase = (pattern.flags() & Pattern.CASE_INSENSITIVE) != 0;
            for (int one = 0; one < LETTERS; one++) {
                for (int two = 0; two < LETTERS && signs.get('a' + one); two++) {
                    pairs.set(
                            one * LETTERS + two,
                            !anyCase || mayBegin(pattern, before + (char) ('a' + one) + (char) ('a' + two)));
                }
            }
            boolean any = !anyCase || pairs.cardinality() == LETTERS * LETTERS;
            for (int pair = pairs.nextSetBit(0); pair >= 0; pair = pairs.nextSetBit(pair + 1)) {
                String two = before + (char) ('a' + pair / LETTERS) + (char) ('a' + pair % LETTERS);
                for (int three = 0; three < LETTERS; three++) {
                    triples.set(pair * LETTERS + three, any || mayBegin(pattern, two + (char) ('a' + three)));
                }
            }
        }

        /** It matched, or the end was all that stopped it. */
        private static boolean mayBegin(Pattern pattern, String signs) {
            Matcher matcher = pattern.matcher(signs);
            return matcher.lookingAt() || matcher.hitEnd();
        }

        boolean mayStandAt(String text, int at) {
            char sign = text.charAt(at);
            if (sign >= SIGNS) {
                return true;
            }
            if (!signs.get(sign)) {
                return false;
            }
            int one = letter(text, at);
            int two = one < 0 ? -1 : letter(text, at + 1);
            if (two < 0) {
                return true;
            }
            int three = letter(text, at + 2);
            int pair = one * LETTERS + two;
            return three < 0 ? pairs.get(pair) : triples.get(pair * LETTERS + three);
        }

        /** From 0 for a to 25 for z; below 0 for any other sign. */
        private static int letter(String text, int at) {
            int letter = at < text.length() ? (text.charAt(at) | 0x20) - 'a' : -1;
            return letter < LETTERS ? letter : -1;
        }
    }
}
