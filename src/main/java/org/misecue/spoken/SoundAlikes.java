package org.misecue.spoken;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.codec.language.DoubleMetaphone;

/** Words of the recipe by their sound: recognisers write "flower" and "currents". */
final class SoundAlikes {

    /** Shorter words and codes sound like too many others. */
    private static final int SHORTEST_WORD = 4;

    private static final int SHORTEST_CODE = 3;

    private final DoubleMetaphone metaphone = new DoubleMetaphone();
    private final Map<String, String> bySound = new HashMap<>();

    SoundAlikes(Set<String> vocabulary) {
        metaphone.setMaxCodeLen(8);
        for (String word : vocabulary) {
            String code = metaphone.doubleMetaphone(word);
            if (word.length() >= SHORTEST_WORD && code.length() >= SHORTEST_CODE) {
                bySound.merge(code, word, (one, other) -> one.compareTo(other) < 0 ? one : other);
            }
        }
    }

    /** The word of the recipe that sounds like this one and begins with the same letter. */
    Optional<String> of(String heard) {
        if (heard.length() < SHORTEST_WORD) {
            return Optional.empty();
        }
        return Optional.ofNullable(bySound.get(metaphone.doubleMetaphone(heard)))
                .filter(word -> word.charAt(0) == heard.charAt(0) && Math.abs(word.length() - heard.length()) <= 2);
    }
}
