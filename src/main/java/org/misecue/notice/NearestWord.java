package org.misecue.notice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The known word that a mistyped one was probably meant to be. */
public final class NearestWord {

    private NearestWord() {}

    /** “did you mean …?”, or else all that is known here. */
    public static String remedy(String typed, List<String> known) {
        return of(typed, known)
                .map(near -> "did you mean “" + near + "”?")
                .orElse("known here: " + String.join(", ", known) + ".");
    }

    /** The nearest by letters changed, left out, put in or swapped; empty where more than a third is wrong. */
    public static Optional<String> of(String typed, List<String> known) {
        int bound = Math.max(2, typed.length() / 3);
        return known.stream()
                // a word far longer than any known one is like none, and not worth the table
                .filter(word -> Math.abs(typed.length() - word.length()) <= bound)
                .filter(word -> distance(typed, word) <= bound)
                .min(Comparator.comparingInt(word -> distance(typed, word)));
    }

    static int distance(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, from, to, i, j);
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int cheapest(int[][] cost, String from, String to, int i, int j) {
        int change = from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1;
        int best = Math.min(cost[i - 1][j - 1] + change, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}
