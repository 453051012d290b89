package org.misecue.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A place in a text that moves forward as things are read, and goes back where a reading fails. */
final class Cursor {

    private static final Pattern ANYTHING = Pattern.compile("");

    private final String text;
    private final Matcher matcher;
    private int at;

    Cursor(String text, int at) {
        this.text = text;
        this.matcher = ANYTHING.matcher(text).useTransparentBounds(true).useAnchoringBounds(false);
        this.at = at;
    }

    int at() {
        return at;
    }

    void backTo(int place) {
        at = place;
    }

    boolean sees(Pattern pattern) {
        return matcher(pattern).lookingAt();
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

    boolean skip(Pattern pattern) {
        Matcher matcher = matcher(pattern);
        boolean found = matcher.lookingAt();
        at = found ? matcher.end() : at;
        return found;
    }

    /** Reads what the pattern matches here and moves behind it. */
    Optional<MatchResult> take(Pattern pattern) {
        Matcher matcher = matcher(pattern);
        if (!matcher.lookingAt()) {
            return Optional.empty();
        }
        at = matcher.end();
        return Optional.of(matcher.toMatchResult());
    }

    private Matcher matcher(Pattern pattern) {
        return matcher.usePattern(pattern).region(at, text.length());
    }
}
