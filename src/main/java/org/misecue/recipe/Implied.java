package org.misecue.recipe;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** What a step uses without a name for it: the butter "for the tin" that is greased, a second dough made "in the same way". */
final class Implied {

    private static final Pattern GREASES = Pattern.compile(
            "\\b(?:butter|oil|grease|greasing)\\h+(?:and\\h+(?:line|flour)\\h+)?(?:an?|the|your|two|three|both|\\d+)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern FOR_THE_TIN = Pattern.compile(
            "\\b(?:for|to)\\h+(?:the\\h+|grease\\h+the\\h+|your\\h+)?(?:greasing|grease|tins?|dish(?:es)?|pans?|moulds?|molds?|trays?)\\b",
            Pattern.CASE_INSENSITIVE);
    private static final Pattern SAME_WAY =
            Pattern.compile("\\b(?:in\\h+)?(?:exactly\\h+)?the\\h+same\\h+(?:way|manner)\\b", Pattern.CASE_INSENSITIVE);

    private static final Cues GREASING = Cues.of("butter", "oil", "greas");
    private static final Cues SAME = Cues.of("same");

    private Implied() {}

    /** The unused lines that a step uses so; {@code context} is the part at hand. */
    static List<LineRef> in(String text, List<LineRef> all, Set<LineRef> used, int context) {
        boolean greases = GREASING.standIn(text) && GREASES.matcher(text).find();
        boolean again = SAME.standIn(text)
                && SAME_WAY.matcher(text).find()
                && all.stream().map(LineRef::component).distinct().count() > 1; // else it is the same mixture again
        return all.stream()
                .filter(ref -> !used.contains(ref))
                .filter(ref -> (greases && isForTheTin(ref.line())) || (again && ref.component() == context))
                .toList();
    }

    private static boolean isForTheTin(IngredientLine line) {
        return FOR_THE_TIN.matcher(line.text().toLowerCase(Locale.ROOT)).find();
    }
}
