package org.misecue.spoken;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.codec.language.DoubleMetaphone;
import org.apache.commons.text.similarity.LevenshteinDistance;

/**
 * Words of the recipe by their sound: recognisers write "flower", "currents" and "east". Consonants go by their sound, the
 * first vowel and the spelling must be near: "better" is no butter and "block" is not black.
 */
final class SoundAlikes {

    /** Shorter words and codes sound like too many others. */
    private static final int SHORTEST_WORD = 4;

    /** Said all the time: been is no bean. */
    private static final Set<String> COMMON = Set.of("been", "meat", "meet", "seem", "seen", "week", "weak");

    private static final int SHORTEST_CODE = 3;
    private static final int LONG_WORD = 6;
    private static final int LONGEST_CODE = 8;

    private final DoubleMetaphone metaphone = new DoubleMetaphone();
    private final Map<String, List<String>> bySound = new HashMap<>();
    private final Map<String, String> codes = new HashMap<>();
    private final Map<String, Optional<String>> looked = new HashMap<>();

    SoundAlikes(Set<String> vocabulary) {
        metaphone.setMaxCodeLen(LONGEST_CODE);
        for (String word : vocabulary) {
            if (word.length() >= SHORTEST_WORD) {
                bySound.computeIfAbsent(metaphone.doubleMetaphone(word), code -> new ArrayList<>())
                        .add(word);
            }
        }
    }

    /** The word of the recipe that sounds like this one. */
    Optional<String> of(String heard) {
        return looked.computeIfAbsent(heard, this::find);
    }

    private Optional<String> find(String heard) {
        String code = heard.length() < SHORTEST_WORD ? "" : code(heard);
        if (code.length() < SHORTEST_CODE) {
            return code.isEmpty() || COMMON.contains(heard)
                    ? Optional.empty()
                    : nearest(code, heard, word -> word.replace("ea", "ee").equals(heard.replace("ea", "ee")));
        }
        return nearest(code, heard, word -> isSpeltLike(word, heard));
    }

    /** The word that has the same consonants but for the vowel between them: "card" for curd. */
    Optional<String> loosely(String heard) {
        String code = heard.length() < SHORTEST_WORD ? "" : code(heard);
        return code.length() < SHORTEST_CODE
                ? Optional.empty()
                : nearest(code, heard, word -> word.charAt(0) == heard.charAt(0) && distance(word, heard) <= 1);
    }

    /** The short word of the recipe that two pieces make, a letter more or less: "sue it". */
    Optional<String> nearly(String pieces) {
        if (pieces.length() < SHORTEST_WORD) {
            return Optional.empty();
        }
        return nearest(code(pieces), pieces, word -> distance(word, pieces) <= 1 && isSameVowel(word, pieces));
    }

    /** The long word of the recipe that pieces make, which has the same consonants and nearly the same spelling: "salt anas". */
    Optional<String> pieced(String pieces) {
        String code = code(pieces);
        return code.length() > SHORTEST_CODE
                ? nearest(code, pieces, word -> word.charAt(0) == pieces.charAt(0) && distance(word, pieces) <= 2)
                : Optional.empty();
    }

    /** Kept, as the same words are asked for in several ways. */
    private String code(String heard) {
        return codes.computeIfAbsent(heard, metaphone::doubleMetaphone);
    }

    private Optional<String> nearest(String code, String heard, Predicate<String> like) {
        return bySound.getOrDefault(code, List.of()).stream()
                .filter(like)
                .min(Comparator.<String>comparingInt(word -> distance(word, heard))
                        .thenComparing(Comparator.naturalOrder()));
    }

    private static boolean isSpeltLike(String word, String heard) {
        int allowed = Math.max(word.length(), heard.length()) < LONG_WORD ? 1 : 2;
        boolean initial = word.charAt(0) == heard.charAt(0) || distance(word, heard) <= 1;
        return initial
                && isSameVowel(word, heard)
                && Math.min(distance(word, heard), distance(asSaid(word), asSaid(heard))) <= allowed;
    }

    /** Letters that sound alike written in one way: "treacle" and "trickle". */
    private static String asSaid(String word) {
        return word.replace("ck", "k").replace('c', 'k').replace("ea", "i").replace("ee", "i");
    }

    private static int distance(String one, String other) {
        return LevenshteinDistance.getDefaultInstance().apply(one, other);
    }

    private static boolean isSameVowel(String one, String other) {
        String vowels = firstVowels(other);
        return firstVowels(one).chars().anyMatch(vowel -> vowels.indexOf(vowel) >= 0);
    }

    /** The first vowel as it may be said: "oo" and "ee" count as one letter, "ea" is one of "bread" or of "treacle". */
    private static String firstVowels(String word) {
        for (int i = 0; i < word.length(); i++) {
            char letter = word.charAt(i);
            if ("aeiou".indexOf(letter) >= 0) {
                String two = word.substring(i, Math.min(word.length(), i + 2));
                return switch (two) {
                    case "oo" -> "u";
                    case "ee" -> "i";
                    case "ea" -> "ei";
                    default -> String.valueOf(letter);
                };
            }
        }
        return " ";
    }
}
