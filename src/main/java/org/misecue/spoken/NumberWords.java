package org.misecue.spoken;

import static java.util.Map.entry;

import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The words that numbers are made of. */
final class NumberWords {

    static final Map<String, Integer> UNITS = Map.ofEntries(
            entry("one", 1),
            entry("two", 2),
            entry("three", 3),
            entry("four", 4),
            entry("five", 5),
            entry("six", 6),
            entry("seven", 7),
            entry("eight", 8),
            entry("nine", 9));

    static final Map<String, Integer> TEENS = Map.ofEntries(
            entry("ten", 10),
            entry("eleven", 11),
            entry("twelve", 12),
            entry("thirteen", 13),
            entry("fourteen", 14),
            entry("fifteen", 15),
            entry("sixteen", 16),
            entry("seventeen", 17),
            entry("eighteen", 18),
            entry("nineteen", 19));

    static final Map<String, Integer> TENS = Map.ofEntries(
            entry("twenty", 20),
            entry("thirty", 30),
            entry("forty", 40),
            entry("fourty", 40),
            entry("fifty", 50),
            entry("sixty", 60),
            entry("seventy", 70),
            entry("eighty", 80),
            entry("ninety", 90));

    static final Set<String> ZEROS = Set.of("zero", "nought", "naught", "nil");

    /** How a nought is said between digits: "one oh five". */
    static final Set<String> OHS = Set.of("oh", "o", "zero", "nought");

    static final Map<String, Long> SCALES = Map.ofEntries(
            entry("thousand", 1_000L),
            entry("million", 1_000_000L),
            entry("billion", 1_000_000_000L),
            entry("trillion", 1_000_000_000_000L),
            entry("quadrillion", 1_000_000_000_000_000L));

    /** Parts of one; the plural is the same with an s, "half" and "halves" apart. */
    static final Map<String, Integer> PARTS = Map.ofEntries(
            entry("half", 2),
            entry("halves", 2),
            entry("third", 3),
            entry("quarter", 4),
            entry("fourth", 4),
            entry("fifth", 5),
            entry("sixth", 6),
            entry("seventh", 7),
            entry("eighth", 8),
            entry("ninth", 9),
            entry("tenth", 10),
            entry("twelfth", 12),
            entry("sixteenth", 16));

    static final Map<String, Integer> GROUPS = Map.of("couple", 2, "pair", 2, "dozen", 12);

    static final Map<Character, long[]> VULGAR = Map.ofEntries(
            entry('½', new long[] {1, 2}),
            entry('⅓', new long[] {1, 3}),
            entry('⅔', new long[] {2, 3}),
            entry('¼', new long[] {1, 4}),
            entry('¾', new long[] {3, 4}),
            entry('⅛', new long[] {1, 8}),
            entry('⅜', new long[] {3, 8}),
            entry('⅝', new long[] {5, 8}),
            entry('⅞', new long[] {7, 8}));

    private static final Map<String, Integer> HOMOPHONES = Map.of("tree", 3, "too", 2, "fore", 4, "won", 1, "ate", 8);
    private static final Set<String> BEFORE_MEASURE =
            Set.of("hundred", "grams", "teaspoons", "tablespoons", "tea", "table", "cups", "ounces", "mils", "mls");

    private NumberWords() {}

    /**
     * "tree hundred", "too teaspoons", "for cups": a digit that the recogniser wrote as another word is one only right
     * before a hundred or a measure. Null where it is none.
     */
    static @Nullable Integer misheard(String word, String next) {
        Integer digit = HOMOPHONES.get(word);
        return digit != null && BEFORE_MEASURE.contains(next) ? digit : null;
    }

    /** Whether a word is a number, or the end of one. */
    static boolean isOne(String word) {
        return word.matches("\\d+")
                || UNITS.containsKey(word)
                || TEENS.containsKey(word)
                || TENS.containsKey(word)
                || word.equals("hundred");
    }

    /** The divisor of a part of one, singular or plural; 0 if the word is none. */
    static int part(String word) {
        Integer whole = PARTS.get(word);
        if (whole == null && word.endsWith("s")) {
            whole = PARTS.get(word.substring(0, word.length() - 1));
        }
        return whole == null ? 0 : whole;
    }
}
