package org.misecue.bench;

import java.util.Collections;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The words by which two rows are known as one. On purpose not the engine's own reading of names: it is being measured. */
final class NameWords {

    private static final Set<String> EMPTY_WORDS =
            Set.of("of", "the", "a", "for", "and", "or", "fresh", "fine", "finely", "good", "large", "medium");

    private static final Pattern WORD = Pattern.compile("[a-z]+");

    private NameWords() {}

    static Set<String> of(String name) {
        return WORD.matcher(name.toLowerCase(Locale.ROOT))
                .results()
                .map(MatchResult::group)
                .filter(word -> !EMPTY_WORDS.contains(word))
                .map(NameWords::singular)
                .collect(Collectors.toSet());
    }

    static boolean meet(Set<String> one, Set<String> other) {
        return !Collections.disjoint(one, other);
    }

    static int shared(Set<String> one, Set<String> other) {
        Set<String> both = new HashSet<>(one);
        both.retainAll(other);
        return both.size();
    }

    private static String singular(String word) {
        if (word.length() > 3 && word.endsWith("ies")) {
            return word.substring(0, word.length() - 3) + "y";
        }
        boolean plural = word.length() > 3 && word.endsWith("s") && !word.endsWith("ss");
        return plural ? word.substring(0, word.length() - 1) : word;
    }
}
