package org.misecue.recipe;

import java.util.regex.Pattern;
import org.misecue.pantry.Pantry;

/** A bracket before the noun: another name for the same, "caster (superfine) sugar", or a sort of it. */
final class InnerBracket {

    /** One or two words that may be a sort of a thing. */
    private static final Pattern SORT = Pattern.compile(
            "(?!(?:or|not|but|about|any|see|if|i|from|my|our|the|optional)\\b)[\\p{L}'’-]+(?:\\h[\\p{L}'’-]+)?",
            Pattern.CASE_INSENSITIVE);

    private InnerBracket() {}

    /** Whether the bracket belongs to the name whose words stand before and after it. */
    static boolean isName(String before, String inner, String after, Pantry pantry) {
        String end = after.split("[,;(]", 2)[0].strip();
        return !before.isBlank()
                && !end.isEmpty()
                && !Tail.begins(end)
                && !DonePhrase.begins(end)
                && (pantry.heardAs(inner + " " + end).isPresent() || isSort(inner));
    }

    private static boolean isSort(String inner) {
        return SORT.matcher(inner).matches() && Words.split(inner).stream().noneMatch(InnerBracket::isDone);
    }

    private static boolean isDone(String word) {
        return switch (PreparationWords.sort(word)) {
            case DONE, STATE, BEHIND, MANNER, SOLD -> true;
            case KIND, OTHER -> false;
        };
    }
}
