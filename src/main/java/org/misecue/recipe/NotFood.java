package org.misecue.recipe;

import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;

/** Words of a step that are written like an ingredient and mean none: verbs, colours, water baths, the butter for a tin. */
final class NotFood {

    private static final Set<String> ALSO_VERBS = Set.of(
            "cream", "butter", "ice", "flour", "oil", "zest", "salt", "sugar", "juice", "pepper", "water", "spice",
            "seed", "peel", "half", "toast", "egg");
    private static final Set<String> OBJECTS =
            Set.of("the", "it", "them", "this", "your", "a", "an", "two", "three", "four", "both", "each");
    /** What makes a white that of an egg, where no egg stands beside it: "until almost white" is a colour. */
    private static final Set<String> OF_EGGS =
            Set.of("the", "a", "one", "each", "egg", "remaining", "beaten", "whisked");

    private static final Set<String> POURS = Set.of("pour", "poured", "pouring", "add", "stir", "sprinkle", "measure");
    private static final Set<String> BATHS = Set.of("over", "pan", "bath", "bowl");

    private static final Cued GREASING = Cued.inAnyCase(
            "(?:^|[.;:!,]\\h*|\\b(?:and|then)\\h+)((?:(?:lightly|generously|well)\\h+)?(?:butter|oil|flour)(?:(?:,|,?\\h+and)\\h+(?:lightly\\h+)?(?:flour|butter|oil|dust)){0,4})"
                    + "\\h+(?:and\\h+(?:base-)?line\\h+)?(?:an?|the|your|two|three|four|both|each|\\d+)\\h+(?:[\\p{L}\\d½¼¾.\"-]+\\h+){0,7}?"
                    + "(?:tins?|pans?|dish|dishes|moulds?|molds?|trays?|ramekins?|sheets?|basins?|springform|bundt)\\b");

    private static final String STOPS = ".;:,!";
    private static final Set<String> JOINTS = Set.of("and", "then", "to");

    private NotFood() {}

    /** "Butter and flour a tin" uses neither from the list; places stay. */
    static Wording withoutGreasing(Wording text) {
        List<MatchResult> greasing = GREASING.in(text);
        if (greasing.isEmpty()) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.text());
        for (MatchResult verbs : greasing) {
            for (int at = verbs.start(1); at < verbs.end(1); at++) {
                plain.setCharAt(at, '.');
            }
        }
        return Wording.of(plain.toString());
    }

    /** Whether the words from {@code at} on, so many, name something to eat. */
    static boolean mayBeNamed(Words words, int at, int length) {
        return !isBath(words, at, at + length - 1) && (length > 1 || (!isVerb(words, at) && !isColour(words, at)));
    }

    /** "Cream the butter" names no cream. */
    private static boolean isVerb(Words words, int at) {
        if (!ALSO_VERBS.contains(words.list().get(at).singular()) || at + 1 == words.size()) {
            return false;
        }
        if (!words.joined(at)) {
            return false; // "and eggs. The mixture" orders nobody to egg it
        }
        String next = words.list().get(at + 1).singular();
        boolean creaming = words.list().get(at).singular().equals("cream") && next.equals("together");
        boolean object = OBJECTS.contains(next) || creaming;
        return object && (at == 0 || opens(words, at));
    }

    /** Whether a stop or a joint of the sentence stands right before a word. */
    private static boolean opens(Words words, int at) {
        int before = words.list().get(at).start() - 1;
        while (before >= 0 && Character.isWhitespace(words.text().charAt(before))) {
            before--;
        }
        return before >= 0 && STOPS.indexOf(words.text().charAt(before)) >= 0
                || words.joined(at - 1)
                        && JOINTS.contains(words.list().get(at - 1).singular());
    }

    private static boolean isColour(Words words, int at) {
        Words.Word word = words.list().get(at);
        return word.singular().equals("white")
                && !word.plural()
                && (at == 0 || !OF_EGGS.contains(words.list().get(at - 1).singular()));
    }

    /** Water that something is warmed over is no ingredient. */
    private static boolean isBath(Words words, int at, int last) {
        if (!words.list().get(last).singular().equals("water")) {
            return false;
        }
        for (int before = Math.max(0, at - 4); before < at; before++) {
            if (POURS.contains(words.list().get(before).singular())) {
                return false;
            }
        }
        for (int before = Math.max(0, at - 4); before < at; before++) {
            if (BATHS.contains(words.list().get(before).singular())) {
                return true;
            }
        }
        return false;
    }
}
