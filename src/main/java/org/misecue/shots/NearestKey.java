package org.misecue.shots;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** The known word that a mistyped one was meant to be. */
final class NearestKey {

    private static final int FARTHEST = 3;

    private NearestKey() {}

    /** Empty where none is within three changed letters, or where more than half of the word would change. */
    static Optional<String> of(String typed, Collection<String> known) {
        return known.stream()
                .filter(word -> distance(typed, word) <= Math.min(FARTHEST, Math.max(1, word.length() / 2)))
                .min(Comparator.comparingInt((String word) -> distance(typed, word))
                        .thenComparing(Comparator.naturalOrder()));
    }

    /** How many letters to insert, leave out or replace (Levenshtein's distance). */
    static int distance(String one, String other) {
        int[] before = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int replaced = before[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, Math.min(before[j], row[j - 1]) + 1);
            }
            before = row;
        }
        return before[other.length()];
    }
}
