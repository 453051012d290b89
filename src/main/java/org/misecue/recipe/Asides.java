package org.misecue.recipe;

import java.util.regex.Pattern;

/** Words by which a step puts something by for later: "reserve 2 tbsp of the milk", "keeping back 50 g of the flour". */
final class Asides {

    private static final Pattern PUT_BY = Pattern.compile(
            "\\b(?:reserv(?:e|ing)|sav(?:e|ing)|(?:set|put|keep|hold)(?:t?ing)?\\h+(?:aside|back|by))\\b[^.;,]*$",
            Pattern.CASE_INSENSITIVE);

    private static final Cues CUES = Cues.of("reserv", "sav", "aside", "back", "by");

    private Asides() {}

    /** Whether the clause that ends here puts by what comes next. */
    static boolean isBefore(String before) {
        return CUES.standIn(before) && PUT_BY.matcher(before).find();
    }
}
