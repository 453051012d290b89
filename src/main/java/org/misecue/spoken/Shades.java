package org.misecue.spoken;

import java.util.OptionalInt;
import java.util.Set;

/**
 * How little an amount may be off: "a whisker under two hundred", "a cup, it might be a hair over". As many small words as
 * there are kitchens; common practice of speech, no source.
 */
final class Shades {

    private static final Set<String> SMALL =
            Words.set("bit touch hair shade whisker smidge smidgen tad fraction drop squeak little scrape");
    private static final Set<String> OFF = Set.of("under", "over", "more", "less", "short", "shy", "below", "above");
    private static final Set<String> LINKS = Set.of("of", "than");
    private static final Set<String> MODALS = Set.of("might", "may", "could", "will", "would");
    private static final Set<String> PERHAPS = Set.of("maybe", "perhaps", "possibly", "probably");
    private static final Set<String> SUBJECTS = Set.of("it", "that", "they", "which", "or", "and");

    /** What may follow where the shade is all that is told: "a bit under ripe" tells of something else. */
    private static final Set<String> NEXT =
            Words.set("and but so i we you it that than no nobody don't do now i'm it'll either or because");

    private final WordStream words;

    Shades(WordStream words) {
        this.words = words;
    }

    /** Where the shade begins that ends right before the index: "a whisker under | two hundred". */
    OptionalInt before(int end) {
        int at = LINKS.contains(words.text(end - 1)) ? end - 2 : end - 1;
        for (int start = at - 1; start >= at - 3; start--) {
            OptionalInt off = from(start);
            if (off.isPresent() && off.getAsInt() == at + 1) {
                return OptionalInt.of(start);
            }
        }
        return OptionalInt.empty();
    }

    /** Whether what follows doubts the amount before it: "a cup | it might be a hair under". */
    boolean behind(int end) {
        return isIfThat(end) || isShadeBehind(end);
    }

    /** "fifty mils, if that", not "if that is too thick". */
    private boolean isIfThat(int at) {
        return words.text(at).equals("if")
                && words.text(at + 1).equals("that")
                && !words.border(at + 1)
                && isOver(at + 2);
    }

    private boolean isOver(int at) {
        return words.border(at) || NEXT.contains(words.text(at));
    }

    private boolean isShadeBehind(int end) {
        int at = end;
        while (at < end + 2 && SUBJECTS.contains(words.text(at))) {
            at++;
        }
        OptionalInt perhaps = perhaps(at);
        if (perhaps.isEmpty()) {
            return false;
        }
        OptionalInt off = from(perhaps.getAsInt());
        return off.isPresent() && isOver(off.getAsInt());
    }

    /** Behind "might be", "could even be", "maybe". */
    private OptionalInt perhaps(int at) {
        if (PERHAPS.contains(words.text(at))) {
            return OptionalInt.of(at + 1);
        }
        for (int be = at + 1; MODALS.contains(words.text(at)) && be < at + 3; be++) {
            if (words.text(be).equals("be")) {
                return OptionalInt.of(be + 1);
            }
        }
        return OptionalInt.empty();
    }

    /** The end of "a hair under", "a little bit over". */
    private OptionalInt from(int start) {
        if (!words.text(start).equals("a")) {
            return OptionalInt.empty();
        }
        int at = start + 1;
        while (SMALL.contains(words.text(at))) {
            at++;
        }
        return at > start + 1 && OFF.contains(words.text(at)) ? OptionalInt.of(at + 1) : OptionalInt.empty();
    }
}
