package org.misecue.recipe;

import java.util.Optional;
import java.util.regex.Matcher;

/**
 * Notes behind a name that no comma divides: "butter for the tin", "milk warmed to 37 °C".
 *
 * @param before the name
 * @param notes what is said behind it
 */
record Tail(String before, String notes) {

    /** What "in" leads to where it does not belong to the name, as it does in "apricots in juice". */
    private static final String SHAPE =
            "(?:\\d|(?:\\p{L}+\\h+){0,2}(?:pieces|cubes|chunks|strips|slices|dice|halves|quarters|segments|wedges))";

    /** Where the notes begin: names hold neither "for" nor "to", "if", "at" or "plus". */
    private static final Cued TAIL = Cued.inAnyCase(
            "\\h+(?:[–—-]+\\h+|(?=(?:plus|for|to|at|if|as|such\\h+as|from|straight\\h+from|until|about|preferably|ideally"
                    + "|see|each|per|more|extra|not|any|which|that|whatever|whichever|when|before|after|minimum|including|depending|like|overnight|without|less|or\\h+"
                    + Notes.NO_OTHER
                    + "|(?:and|&)\\h+(?:more|extra|some|\\d+|an?|one|two|three)(?=\\h)|with\\h+(?:an?|the|their|its|some|skins?|peel|\\d+)|in\\h+"
                    + SHAPE + ")\\b|@|\\+(?=\\h*(?:[\\d½¼¾⅓⅔⅛]|extra|more|some|an?\\h|for\\h))))");

    private static final Cued GO_ON = Cued.inAnyCase("(?:with|in|to|from)\\b");

    static Optional<Tail> in(String text) {
        return TAIL.firstIn(Wording.of(text), 0)
                .filter(tail -> tail.start() > 0)
                .map(tail -> in(text, tail));
    }

    private static Tail in(String text, Matcher tail) {
        int start = doneBefore(text, tail.start(), tail.end());
        String notes = text.substring(start < tail.start() ? start : tail.end());
        return new Tail(text.substring(0, start).strip(), notes.strip());
    }

    /** Whether a text is nothing but such notes. */
    static boolean begins(String text) {
        return TAIL.pattern().matcher(" " + text).lookingAt();
    }

    /** Where the word begins that a tail goes on: the "mixed" of "mixed with 1 tbsp water". */
    private static int doneBefore(String text, int start, int end) {
        int word = text.lastIndexOf(' ', start - 1);
        boolean goesOn =
                GO_ON.pattern().matcher(text).region(end, text.length()).lookingAt();
        return word > 0 && goesOn && PreparationWords.sort(text.substring(word, start)) != PreparationWords.Sort.OTHER
                ? word
                : start;
    }
}
