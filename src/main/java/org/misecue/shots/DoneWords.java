package org.misecue.shots;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How the method tells when an action is done: "until pale and fluffy", "to soft peaks". */
final class DoneWords {

    private static final Pattern DONE = Pattern.compile(
            "\\b(?:(?:un)?til\\b[^.;!?]*?(?=[.;!?]|,? (?:then|and (?:then )?$)|, and |$)"
                    + "|to (?:a |an )?(?:[\\w-]+ ){0,2}(?:peaks?|paste|cream|crumbs?|breadcrumbs|dough|batter|caramel|powder|pur[ée]e)\\b)",
            Pattern.CASE_INSENSITIVE);

    private static final Pattern LOOSE_END = Pattern.compile("[\\s,]+(?:and|then|or)?\\s*$");

    private DoneWords() {}

    /** Empty where it does not tell. */
    static String of(String text) {
        Matcher done = DONE.matcher(text);
        return done.find() ? LOOSE_END.matcher(done.group().strip()).replaceFirst("") : "";
    }
}
