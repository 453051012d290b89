package org.misecue.quantity;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Amounts without a measure: "a handful of", "a few", "a knob of". */
final class LooseAmounts {

    private static final String THING =
            "(?:handful|splash|dash|drizzle|glug|knob|sprinkling|sprinkle|grating|touch|squeeze|dollop|scattering|dusting"
                    + "|twist|grind|swirl|spoonful|slug|shake|blob|lick|scraping|trickle|smear|slosh"
                    + "|(?:nut|bit|lump|chunk|hunk|nugget)(?=s?\\h+of))";
    /** Small things of which "a few" is no number that anybody would weigh by. */
    private static final String BITS = "(?:drops|sprigs|leaves|strands|threads|grains|grates|grinds|twists)";

    private static final Shape LOOSE = loose("|\\p{L}+-sized?");
    /** Without those that any word may begin: "egg-sized knob". */
    static final Shape UNSIZED = loose("");

    private static final Shape COUNTED_LOOSELY =
            Shape.of("\\h+(?:of\\h+)?(?:(?:good|generous|large|small|big)\\h+)?(?:" + BITS + "|" + THING
                    + "e?s|slices|pieces|cloves|pinches|cubes|(?:table|tea)?spoon(?:ful)?s|tbsps?|tsps?)\\b");

    private static final Shape SMALL_THING = Shape.inAnyCase(THING);
    /** What may follow a number or an article at once. */
    private static final Shape BEHIND_NUMBER = Shape.inAnyCase(
            "good|generous|large|small|big|tiny|little|heaped|few|bit|lot|couple|of|an?\\b|scant|pinch|" + THING);

    private static final Set<String> NUMBERS =
            Set.of("a", "an", "the", "one", "two", "three", "four", "couple", "half");
    private static final int WORDS_BETWEEN = 2;

    private LooseAmounts() {}

    /** A quick no for most of the many words and numbers that begin no such amount. */
    static boolean mayStand(String text, int at) {
        int end = wordEnd(text, at);
        if (end == at) {
            int figures = Cursor.digitsEnd(text, at);
            return figures > at && mayFollow(text, figures);
        }
        return NUMBERS.contains(text.substring(at, end).toLowerCase(Locale.ROOT))
                ? mayFollow(text, end)
                : UNSIZED.mayStandAt(text, at) || QuantityReader.isSize(text, at);
    }

    /** The same for what stands behind an article or a number; figures and words with hyphens may measure. */
    static boolean mayFollow(String text, int numberEnd) {
        int word = Blanks.end(text, numberEnd);
        if (word == text.length()) {
            return false;
        }
        int end = wordEnd(text, word);
        if (end == word || Cursor.sign(text, end) == '-' || BEHIND_NUMBER.mayStandAt(text, word)) {
            return true;
        }
        for (int between = 0; between < WORDS_BETWEEN && Blanks.is(Cursor.sign(text, end)); between++) {
            word = Blanks.end(text, end);
            end = wordEnd(text, word);
            if (SMALL_THING.mayStandAt(text, word)) {
                return true;
            }
        }
        return false;
    }

    private static int wordEnd(String text, int start) {
        int end = start;
        while (Character.isLetter(Cursor.sign(text, end))) {
            end++;
        }
        return end;
    }

    static Optional<Quantity> take(Cursor cursor) {
        if (!cursor.maySee(LooseAmounts::mayStand)) {
            return Optional.empty();
        }
        return cursor.take(LOOSE).map(found -> {
            String words = found.group().toLowerCase(Locale.ROOT)
                    + cursor.take(COUNTED_LOOSELY)
                            .map(java.util.regex.MatchResult::group)
                            .orElse("");
            return new Quantity(new Amount.Unstated(words), Unit.PINCH);
        });
    }

    /** A plural without a number before it is a name, "sprinkles"; any words may praise a thing "of" something. */
    private static Shape loose(String sizes) {
        return Shape.inAnyCase("(?!" + THING
                + "e?s\\b)(?:(?:an?|the|\\d{1,2}|one|two|three|four|(?:an?\\h+)?couple\\h+of|half\\h+an?)\\h+)?"
                + "(?:(?:good|generous|large|small|big|tiny|little|heaped" + sizes + ")\\h+){0,5}" + THING
                + "(?:e?s)?\\b"
                + "|(?:an?|the)\\h+(?:\\p{L}+\\h+){1,2}" + THING + "(?=\\h+of\\b)"
                + "|an?\\h+(?:few|little|bit)\\b(?!\\h+(?:over|under|more|less)\\b)|some\\b(?!\\h+\\d)|few\\b(?=\\h+"
                + BITS + ")"
                + "|(?:an?\\h+)?couple(?=\\h+of\\h+" + BITS.replace("sprigs|leaves|", "")
                + ")|enough\\b|several\\b|plenty\\b"
                + "|a\\h+lot\\b|lots\\b");
    }
}
