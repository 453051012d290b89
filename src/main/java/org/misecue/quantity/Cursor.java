package org.misecue.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tech.units.indriya.function.RationalNumber;

/** A place in a text that moves forward as things are read, and goes back where a reading fails. */
final class Cursor {

    /** Most texts are done with at a glance and never need one of their own. */
    private static final Matcher NOWHERE = Pattern.compile("").matcher("");

    private final String text;
    private Matcher matcher = NOWHERE;
    private int at;
    private int numberStart = -1;
    private int numberEnd;
    private Optional<RationalNumber> number = Optional.empty();

    Cursor(String text, int at) {
        this.text = text;
        this.at = at;
    }

    int at() {
        return at;
    }

    void backTo(int place) {
        at = place;
    }

    boolean sees(Shape shape) {
        return shape.mayStandAt(text, at) && matches(shape.pattern());
    }

    /** Whether these words stand here, in any case; what comes behind them does not matter. */
    boolean seesWords(String words) {
        return text.regionMatches(true, at, words, 0, words.length());
    }

    /** The sign that stands here; NUL at the end. */
    char next() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    /** The letters that stand here, in lower case. */
    String word() {
        int end = at;
        while (end < text.length() && Character.isLetter(text.charAt(end))) {
            end++;
        }
        return text.substring(at, end).toLowerCase(Locale.ROOT);
    }

    void skipBlanksAndHyphens() {
        while (next() == '-' || Blanks.is(next())) {
            at++;
        }
    }

    void skipBlanks() {
        at = Blanks.end(text, at);
    }

    boolean skip(Shape shape) {
        return shape.mayStandAt(text, at) && skip(shape.pattern());
    }

    boolean skip(Pattern pattern) {
        boolean found = matches(pattern);
        at = found ? matcher.end() : at;
        return found;
    }

    /** Reads what the shape matches here and moves behind it. */
    Optional<MatchResult> take(Shape shape) {
        return skip(shape) ? Optional.of(matcher.toMatchResult()) : Optional.empty();
    }

    /** The number that is read here; an amount is read in several ways, and its number once. */
    Optional<RationalNumber> number(Function<Cursor, Optional<RationalNumber>> read) {
        if (at != numberStart) {
            numberStart = at;
            number = read.apply(this);
            numberEnd = at;
        }
        at = numberEnd;
        return number;
    }

    private boolean matches(Pattern pattern) {
        if (matcher == NOWHERE) {
            matcher = pattern.matcher(text).useTransparentBounds(true).useAnchoringBounds(false);
        }
        return matcher.usePattern(pattern).region(at, text.length()).lookingAt();
    }
}
