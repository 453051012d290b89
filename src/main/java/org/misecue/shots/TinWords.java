package org.misecue.shots;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the method bakes in, as it calls it: "roasting dish", "tray". */
final class TinWords {

    private static final Pattern VESSEL = Pattern.compile(
            "(?:(?:roasting|baking|springform|loaf|tart|pie|muffin|bun|pudding|traybake|ovenproof|oven|flan|cake|sandwich)\\h+)?"
                    + "\\b(?:tins?|trays?|baking sheets?|dish(?:es)?|moulds?|rings?|ramekins?|baking stone|skillet|frying pan)\\b",
            Pattern.CASE_INSENSITIVE);

    private static final String ANY = "tin";

    private TinWords() {}

    /** The last one that the text names. */
    static String in(String text) {
        String found = ANY;
        Matcher vessel = VESSEL.matcher(text);
        while (vessel.find()) {
            found = vessel.group().toLowerCase(Locale.ROOT);
        }
        return found;
    }
}
