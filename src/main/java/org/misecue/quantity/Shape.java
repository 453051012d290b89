package org.misecue.quantity;

import java.util.regex.Pattern;

/**
 * A pattern together with the signs that what it matches can begin with, by itself or behind a blank: a glance at them
 * spares most tries. The pattern must not look behind its own beginning.
 */
final class Shape {

    private final Pattern pattern;
    private final FirstSigns first;
    private final FirstSigns behindBlank;
    private final boolean atEnd;

    private Shape(Pattern pattern) {
        this.pattern = pattern;
        this.atEnd = pattern.matcher("").lookingAt();
        this.first = FirstSigns.of(pattern);
        this.behindBlank = FirstSigns.behind(" ", pattern);
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
}
