package org.misecue.pantry;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Finds the ingredient whose name is the longest one in a text, word by word. */
final class NameIndex {

    /** What stands after these is said about the ingredient, or is another one. */
    private static final Pattern ASIDE = Pattern.compile("[,;(\\[]|\\s+(?:or|plus|for|to)\\s+|\\s+[–—-]\\s+");

    private final Map<List<String>, Ingredient> byWords = new HashMap<>();
    private final Set<String> firstWords = new HashSet<>();
    private int longest;

    /** The first ingredient to claim a name keeps it. */
    Optional<Ingredient> add(String name, Ingredient ingredient) {
        List<String> words = Names.words(name);
        longest = Math.max(longest, words.size());
        words.stream().findFirst().ifPresent(firstWords::add);
        return Optional.ofNullable(byWords.putIfAbsent(words, ingredient));
    }

    /** Whether some name begins with this word, given in its comparable form. */
    boolean begins(String word) {
        return firstWords.contains(word);
    }

    Optional<Ingredient> exactly(String name) {
        return Optional.ofNullable(byWords.get(Names.words(name)));
    }

    /** An ingredient and the comparable words that named it. */
    record Match(Ingredient ingredient, List<String> name) {}

    /** Part by part: the name itself first, then what is said after it. */
    Optional<Match> within(String text) {
        for (String part : ASIDE.split(text)) {
            Optional<Match> found = longestIn(Names.words(part));
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Of two names of the same length the later one counts: "vanilla yoghurt" is a yoghurt. */
    private Optional<Match> longestIn(List<String> words) {
        for (int length = Math.min(longest, words.size()); length > 0; length--) {
            for (int from = words.size() - length; from >= 0; from--) {
                List<String> name = words.subList(from, from + length);
                Ingredient found = byWords.get(name);
                if (found != null) {
                    return Optional.of(new Match(found, name));
                }
            }
        }
        return Optional.empty();
    }
}
