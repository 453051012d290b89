package org.misecue.recipe;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Tells the words that say what is done to an ingredient from those that name it. Participles are an open class: a word
 * in -ed is taken for one unless {@code preparation-words.csv} says that it belongs to a name.
 */
final class PreparationWords {

    /** What a word of an ingredient line can be; the table explains each. */
    enum Sort {
        MANNER,
        DONE,
        STATE,
        BEHIND,
        KIND,
        SOLD,
        OTHER
    }

    private static final Pattern PARTICIPLE = Pattern.compile("(?:\\p{L}+-)?\\p{L}{3,}ed");
    private static final Pattern ADVERB = Pattern.compile("\\p{L}{4,}ly");
    private static final Map<String, Sort> TABLE = new HashMap<>();
    /** The participles of the table by their letters without doubles, which is what people most often mistype. */
    private static final Map<String, Sort> WITHOUT_DOUBLES = new HashMap<>();

    private static final Map<String, Set<String>> SOLD_AS = new HashMap<>();

    static {
        for (String line : TableFile.rows("preparation-words.csv")) {
            String[] row = line.split("\\|", -1);
            Sort sort = Sort.valueOf(row[1].toUpperCase(Locale.ROOT));
            TABLE.put(row[0], sort);
            if (row[0].endsWith("ed")) {
                WITHOUT_DOUBLES.putIfAbsent(withoutDoubles(row[0]), sort);
            }
            if (row.length > 2) {
                SOLD_AS.put(row[0], Set.of(row[2].split(" ", -1)));
            }
        }
    }

    private PreparationWords() {}

    /** What the word can be; of a word with hyphens the last piece decides where the whole is not in the table. */
    static Sort sort(String written) {
        String word = letters(written.toLowerCase(Locale.ROOT));
        Sort whole = TABLE.getOrDefault(word, Sort.OTHER);
        if (whole != Sort.OTHER) {
            return whole;
        }
        int hyphen = word.lastIndexOf('-');
        Sort last = hyphen < 0 ? Sort.OTHER : TABLE.getOrDefault(word.substring(hyphen + 1), Sort.OTHER);
        if (last == Sort.DONE || last == Sort.KIND || last == Sort.STATE) {
            return last;
        }
        if (word.endsWith("ed")
                && PARTICIPLE.matcher(word).matches()
                && !word.endsWith("seed")
                && !word.endsWith("weed")) {
            return last == Sort.SOLD ? Sort.SOLD : WITHOUT_DOUBLES.getOrDefault(withoutDoubles(word), Sort.DONE);
        }
        return word.endsWith("ly") && ADVERB.matcher(word).matches() && !word.equals("jelly")
                ? Sort.MANNER
                : Sort.OTHER;
    }

    /** "Desiccated" and "dessicated" alike: "desicated". */
    private static String withoutDoubles(String word) {
        StringBuilder letters = new StringBuilder(word.substring(0, 1));
        for (int at = 1; at < word.length(); at++) {
            if (word.charAt(at) != word.charAt(at - 1)) {
                letters.append(word.charAt(at));
            }
        }
        return letters.toString();
    }

    /** The word without what stands around it. */
    private static String letters(String word) {
        int start = 0;
        int end = word.length();
        while (start < end && !Character.isLetter(word.charAt(start))) {
            start++;
        }
        while (end > start && !Character.isLetter(word.charAt(end - 1))) {
            end--;
        }
        return word.substring(start, end);
    }

    /** Whether a thing that ends in this noun is sold like that: shredded coconut, but not shredded courgette. */
    static boolean isSoldAs(String word, String noun) {
        Set<String> nouns = SOLD_AS.getOrDefault(word.toLowerCase(Locale.ROOT), Set.of());
        return nouns.isEmpty() || nouns.contains(noun.toLowerCase(Locale.ROOT));
    }
}
