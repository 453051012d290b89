package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.misecue.quantity.FirstSigns;

/**
 * A pattern that is tried only on texts that may hold one of the words it cannot do without, and there only where it can
 * begin. Most texts hold none of them, and a glance at a {@link Wording} is many times as fast as a pattern that is tried
 * at every letter.
 */
final class Cued {

    /** The words that matter before a place stand close to it; to look further would make long steps slow. */
    private static final int REACH = 80;

    private final Pattern pattern;
    /** One behind the other: how many places of a wording each has, and these. */
    private final int[] cues;

    private final FirstSigns first;
    private final boolean atBoundary;
    private final boolean atStart;
    private final boolean atWordStarts;
    private final boolean looksBack;

    private Cued(Pattern pattern) {
        this.pattern = pattern;
        this.cues = Needed.in(pattern.pattern()).stream()
                .map(Wording::places)
                .flatMapToInt(places -> IntStream.concat(IntStream.of(places.length), IntStream.of(places)))
                .toArray();
        this.atBoundary = Needed.isAtBoundary(pattern.pattern());
        this.atStart = Needed.isAtStart(pattern.pattern());
        this.looksBack = Needed.looksBack(pattern.pattern());
        this.first = FirstSigns.of(pattern);
        this.atWordStarts = atBoundary && !looksBack && first.areOfWords();
    }

    /** As it is written. */
    static Cued of(String regex) {
        return new Cued(Pattern.compile(regex));
    }

    /** In upper and lower case. */
    static Cued inAnyCase(String regex) {
        return new Cued(Pattern.compile(regex, Pattern.CASE_INSENSITIVE));
    }

    static Cued of(Pattern pattern) {
        return new Cued(pattern);
    }

    Pattern pattern() {
        return pattern;
    }

    /** Whether it may begin with two letters, which {@link FirstSigns#pair} tells of a place. */
    boolean mayBeginWith(int pair) {
        return FirstSigns.mayBegin(pattern, pair);
    }

    /** Whether the pattern may match somewhere in the text, or in a piece of it; if not, it does not. */
    boolean mayStandIn(Wording text) {
        for (int at = 0; at < cues.length; at += 1 + cues[at]) {
            if (text.mayHold(cues, at + 1, cues[at])) {
                return true;
            }
        }
        return cues.length == 0;
    }

    boolean standsIn(Wording text) {
        return firstIn(text, 0).isPresent();
    }

    /** Where it matches first from a place on. */
    Optional<Matcher> firstIn(Wording text, int from) {
        return mayStandIn(text) ? next(text, from) : Optional.empty();
    }

    /** Where it matches first in a piece of a text, as if nothing stood around the piece. */
    Optional<Matcher> firstIn(Wording whole, String piece) {
        return mayStandIn(whole) ? next(piece, 0) : Optional.empty();
    }

    /** Tells of each place where it matches. */
    void each(Wording text, Consumer<Matcher> told) {
        Optional<Matcher> found = firstIn(text, 0);
        while (found.isPresent()) {
            Matcher match = found.get();
            found = next(text, Math.max(match.end(), match.start() + 1));
            told.accept(match);
        }
    }

    /** Each place where it matches. */
    List<MatchResult> in(Wording text) {
        List<MatchResult> found = new ArrayList<>();
        each(text, found::add);
        return found;
    }

    /** The match of a whole text that nothing else is asked about. */
    Optional<Matcher> whole(String text) {
        Matcher matcher = pattern.matcher(text);
        return mayBegin(text, 0) && matcher.matches() ? Optional.of(matcher) : Optional.empty();
    }

    /** The match of the whole text. */
    Optional<Matcher> whole(Wording text) {
        return mayStandIn(text) ? whole(text.text()) : Optional.empty();
    }

    /** The match that begins at a place. */
    Optional<Matcher> at(Wording text, int at) {
        return mayBegin(text.text(), at) && mayStandIn(text) ? at(text.text(), at) : Optional.empty();
    }

    /** Whether what stands right before a place of the text matches; the pattern ends in {@code $}. */
    boolean endsAt(Wording text, int end) {
        if (!mayStandIn(text)) {
            return false;
        }
        for (int at = Math.max(0, end - REACH); at <= end; at++) {
            if (mayBegin(text.text(), at)
                    && pattern.matcher(text.text())
                            .region(at, end)
                            .useTransparentBounds(true)
                            .lookingAt()) {
                return true;
            }
        }
        return false;
    }

    Wording replaceAll(Wording text, String put) {
        return standsIn(text) ? Wording.of(pattern.matcher(text.text()).replaceAll(put)) : text;
    }

    Wording replaceFirst(Wording text, String put) {
        return standsIn(text) ? Wording.of(pattern.matcher(text.text()).replaceFirst(put)) : text;
    }

    private Optional<Matcher> next(Wording text, int from) {
        if (!atWordStarts) {
            return next(text.text(), from);
        }
        for (int at : text.starts()) {
            Optional<Matcher> here = at >= from && mayBegin(text.text(), at) ? at(text.text(), at) : Optional.empty();
            if (here.isPresent()) {
                return here;
            }
        }
        return Optional.empty();
    }

    private Optional<Matcher> next(String text, int from) {
        int last = atStart ? 0 : text.length();
        for (int at = from; at <= last; at++) {
            Optional<Matcher> here = mayBegin(text, at) ? at(text, at) : Optional.empty();
            if (here.isPresent()) {
                return here;
            }
        }
        return Optional.empty();
    }

    private Optional<Matcher> at(String text, int at) {
        Matcher matcher = pattern.matcher(text)
                .region(at, text.length())
                .useTransparentBounds(true)
                .useAnchoringBounds(false);
        return matcher.lookingAt() ? Optional.of(matcher) : Optional.empty();
    }

    private boolean mayBegin(String text, int at) {
        if (at >= text.length()) {
            return true; // a match of nothing may begin at the end
        }
        if (atBoundary && isInWord(text, at)) {
            return false;
        }
        return looksBack || first.mayStandAt(text, at);
    }

    /** Whether a word goes on here that began before. */
    static boolean isInWord(String text, int at) {
        return at > 0 && Character.isLetterOrDigit(text.charAt(at)) && Character.isLetterOrDigit(text.charAt(at - 1));
    }
}
