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
    private final BitSet first;
    private final BitSet behindBlank;
    private final boolean atEnd;

    private Shape(Pattern pattern) {
        this.pattern = pattern;
        this.atEnd = pattern.matcher("").lookingAt();
        this.first = signsBehind("", pattern);
        this.behindBlank = signsBehind(" ", pattern);
    }

    private static BitSet signsBehind(String before, Pattern pattern) {
        BitSet signs = new BitSet(SIGNS);
        for (char sign = 0; sign < SIGNS; sign++) {
            Matcher matcher = pattern.matcher(before + sign);
            // It matched, or the end was all that stopped it.
            signs.set(sign, matcher.lookingAt() || matcher.hitEnd());
        }
        return signs;
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
                ? holds(behindBlank, text.charAt(at + 1))
                : holds(first, text.charAt(at));
    }

    private static boolean holds(BitSet signs, char sign) {
        return sign >= SIGNS || signs.get(sign);
    }
}
