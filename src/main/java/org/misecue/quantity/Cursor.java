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

    /** Whether a glance at this place tells that something may stand here. */
    boolean maySee(Glance glance) {
        return glance.mayStandAt(text, at);
    }

    /** Tells at little cost of many places of a text that something does not stand there. */
    interface Glance {
        boolean mayStandAt(String text, int at);
    }

    boolean sees(Shape shape) {
        return shape.mayStandAt(text, at) && matches(shape.pattern());
    }

    /** The sign that stands here; NUL at the end. */
    char next() {
        return at < text.length() ? text.charAt(at) : 0;
    }

    char signAt(int place) {
        return sign(text, place);
    }

    /** The sign at a place of a text; NUL behind its end. */
    static char sign(String text, int at) {
        return at < text.length() ? text.charAt(at) : 0;
    }

    int blanksEnd(int start) {
        return Blanks.end(text, start);
    }

    /** Where the digits end that stand here. */
    int digitsEnd() {
        return digitsEnd(text, at);
    }

    static int digitsEnd(String text, int start) {
        int end = start;
        while (sign(text, end) >= '0' && sign(text, end) <= '9') {
            end++;
        }
        return end;
    }

    /** The number that the digits up to a place are. */
    long digits(int end) {
        return Long.parseLong(text, at, end, 10);
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

    /** Skips blanks, and the word "of" among them. */
    void skipOf() {
        int word = Blanks.end(text, at);
        boolean of = text.startsWith("of", word)
                && !(word > 0 && isOfWord(text.charAt(word - 1)))
                && !isOfWord(sign(text, word + 2));
        at = of ? Blanks.end(text, word + 2) : word;
    }

    /** What letters, figures and the accents on them are; a word goes on with them. */
    static boolean isOfWord(char sign) {
        return sign == '_' || Character.isLetterOrDigit(sign) || Character.getType(sign) == Character.NON_SPACING_MARK;
    }

    boolean skip(Shape shape) {
        return shape.mayStandAt(text, at) && skip(shape.pattern());
    }

    /** Moves to the end that is told for this place, if it is none below zero. */
    boolean skip(End ending) {
        int end = ending.of(text, at);
        at = Math.max(at, end);
        return end >= 0;
    }

    /** Tells where something ends that begins at a place of a text; below zero where it does not begin there. */
    interface End {
        int of(String text, int at);
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
