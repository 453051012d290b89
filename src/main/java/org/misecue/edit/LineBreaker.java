package org.misecue.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Breaks words into lines where a reader would breathe, and never between a number and its unit. */
final class LineBreaker {

    /** No line ends with one of these, if there is another way: they lean on what follows. */
    private static final Set<String> LEANING = Set.of(
            "a", "an", "the", "of", "to", "in", "into", "on", "at", "for", "with", "and", "or", "but", "my", "your",
            "our", "this", "that", "these", "those", "some", "about", "is", "are", "it's", "i'm", "you're", "we're",
            "then");

    private static final int LEANS = 30;
    private static final int AFTER_NUMBER = 60;
    private static final int CLAUSE_ENDS = -25;

    private final CaptionRules rules;

    LineBreaker(CaptionRules rules) {
        this.rules = rules;
    }

    /** One line or two; empty if they do not fit. */
    Optional<List<String>> lines(List<Said> words) {
        String all = text(words, 0, words.size());
        if (all.length() <= rules.lineLength()) {
            return Optional.of(List.of(all));
        }
        if (rules.lines() < 2) {
            return Optional.empty();
        }
        int best = -1;
        int least = Integer.MAX_VALUE;
        for (int at = 1; at < words.size(); at++) {
            int first = text(words, 0, at).length();
            int second = text(words, at, words.size()).length();
            if (first <= rules.lineLength() && second <= rules.lineLength()) {
                int cost = Math.abs(first - second) + breakCost(words.get(at - 1));
                if (cost < least) {
                    least = cost;
                    best = at;
                }
            }
        }
        return best < 0
                ? Optional.empty()
                : Optional.of(List.of(text(words, 0, best), text(words, best, words.size())));
    }

    /** How badly a break behind this word reads; less than nothing where it reads well. */
    static int breakCost(Said word) {
        String plain = word.text().toLowerCase(java.util.Locale.ROOT);
        if (word.endsSentence() || word.endsClause()) {
            return CLAUSE_ENDS;
        }
        if (LEANING.contains(plain)) {
            return LEANS;
        }
        return plain.matches("[\\d.,½¼¾⅓⅔⅛]+") ? AFTER_NUMBER : 0;
    }

    static String text(List<Said> words, int from, int to) {
        List<String> texts = new ArrayList<>();
        words.subList(from, to).forEach(word -> texts.add(word.text()));
        return String.join(" ", texts);
    }
}
