package org.misecue.pantry;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Names made comparable: words in lower case, without accents, plurals and numbers. */
final class Names {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern APOSTROPHES = Pattern.compile("['’‘`]");
    private static final Pattern NOT_WORDS = Pattern.compile("[^\\p{L}\\p{N}%]+");

    private Names() {}

    /** The words of a text as they are compared; numbers that only count ("2", "½") are left out. */
    static List<String> words(String text) {
        String plain = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
        plain = APOSTROPHES.matcher(MARKS.matcher(plain).replaceAll("")).replaceAll("");
        List<String> words = new ArrayList<>();
        for (String word : NOT_WORDS.split(plain)) {
            if (!word.isEmpty() && (Character.isLetter(word.charAt(0)) || word.startsWith("0") || word.endsWith("%"))) {
                words.add(stem(word));
            }
        }
        return words;
    }

    /**
     * One form for singular and plural. It need be no English word, only the same for both: "berry" and "berries",
     * "half" and "halves", "clove" and "cloves".
     */
    private static String stem(String word) {
        String stem = word;
        if (stem.length() > 3 && stem.endsWith("s") && !stem.endsWith("ss") && !stem.endsWith("us")) {
            stem = stem.substring(0, stem.length() - 1);
        }
        for (String end : List.of("che", "she", "xe", "sse", "oe")) {
            if (stem.endsWith(end)) {
                return stem.substring(0, stem.length() - 1);
            }
        }
        if (stem.endsWith("ie") && stem.length() > 3) {
            return stem.substring(0, stem.length() - 2) + "y";
        }
        return stem.endsWith("ve") ? stem.substring(0, stem.length() - 2) + "f" : stem;
    }
}
