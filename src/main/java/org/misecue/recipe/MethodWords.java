package org.misecue.recipe;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;

/** What the nouns of a method stand for, by the table {@code method-words.csv}. */
final class MethodWords {

    private static final Set<String> MADE = words("made");
    private static final Set<String> KITCHEN = words("kitchen");

    private MethodWords() {}

    /** Whether steps make such a thing: dough, custard, sponge. */
    static boolean isMade(String singular) {
        return MADE.contains(singular);
    }

    /** Whether it is a tool, a place, a look or a measure, which no step makes. */
    static boolean isOfKitchen(String singular) {
        return KITCHEN.contains(singular);
    }

    private static Set<String> words(String sort) {
        return TableFile.rows("method-words.csv").stream()
                .map(row -> row.split("\\|", 2))
                .filter(cells -> cells[0].strip().equals(sort))
                .flatMap(cells -> Arrays.stream(cells[1].strip().split("\\h+")))
                .map(Nouns::singular)
                .collect(Collectors.toUnmodifiableSet());
    }
}
