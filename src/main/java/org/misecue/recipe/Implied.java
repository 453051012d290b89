package org.misecue.recipe;

import java.util.List;
import java.util.Set;

/** What a step uses without a name for it: the butter "for the tin" that is greased, a second dough made "in the same way". */
final class Implied {

    private static final Cued GREASES = Cued.inAnyCase(
            "\\b(?:butter|oil|grease|greasing)\\h+(?:and\\h+(?:line|flour)\\h+)?(?:an?|the|your|two|three|both|\\d+)\\b");
    private static final Cued FOR_THE_TIN = Cued.inAnyCase(
            "\\b(?:for|to)\\h+(?:the\\h+|grease\\h+the\\h+|your\\h+)?(?:greasing|grease|tins?|dish(?:es)?|pans?|moulds?|molds?|trays?)\\b");
    private static final Cued SAME_WAY =
            Cued.inAnyCase("\\b(?:in\\h+)?(?:exactly\\h+)?the\\h+same\\h+(?:way|manner)\\b");

    private Implied() {}

    /** The unused lines that a step uses so; {@code context} is the part at hand. */
    static List<LineRef> in(Wording text, List<LineRef> all, Set<LineRef> used, int context) {
        boolean greases = GREASES.standsIn(text);
        boolean again = SAME_WAY.standsIn(text)
                && all.stream().map(LineRef::component).distinct().count() > 1; // else it is the same mixture again
        if (!greases && !again) {
            return List.of();
        }
        return all.stream()
                .filter(ref -> !used.contains(ref))
                .filter(ref -> (greases && isForTheTin(ref.line())) || (again && ref.component() == context))
                .toList();
    }

    private static boolean isForTheTin(IngredientLine line) {
        return FOR_THE_TIN.standsIn(Wording.of(line.text()));
    }
}
