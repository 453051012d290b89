package org.misecue.quantity;

import java.util.Locale;
import java.util.Optional;

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

    private LooseAmounts() {}

    static Optional<Quantity> take(Cursor cursor) {
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
                + "(?:(?:good|generous|large|small|big|tiny|little|heaped" + sizes + ")\\h+)*" + THING
                + "(?:e?s)?\\b"
                + "|(?:an?|the)\\h+(?:\\p{L}+\\h+){1,2}" + THING + "(?=\\h+of\\b)"
                + "|an?\\h+(?:few|little|bit)\\b(?!\\h+(?:over|under|more|less)\\b)|some\\b(?!\\h+\\d)|few\\b(?=\\h+"
                + BITS + ")"
                + "|(?:an?\\h+)?couple(?=\\h+of\\h+" + BITS.replace("sprigs|leaves|", "")
                + ")|enough\\b|several\\b|plenty\\b"
                + "|a\\h+lot\\b|lots\\b");
    }
}
