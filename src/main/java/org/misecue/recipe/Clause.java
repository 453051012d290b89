package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A run of words that is done at one go: a sentence, or what stands before or behind its "then". */
record Clause(int start, int end) {

    private static final Pattern CUT =
            Pattern.compile("(?<=[.!?;])\\s+|(?:,|;)?\\h+(?:and\\h+)?(?=then\\b)", Pattern.CASE_INSENSITIVE);
    private static final int FEW_WORDS = 2;

    static List<Clause> in(String text) {
        List<Clause> clauses = new ArrayList<>();
        int start = 0;
        Matcher cut = CUT.matcher(text);
        while (cut.find()) {
            if (cut.start() > start) {
                clauses.add(new Clause(start, cut.end()));
                start = cut.end();
            }
        }
        if (start < text.length() || clauses.isEmpty()) {
            clauses.add(new Clause(start, text.length()));
        }
        return clauses;
    }

    boolean holds(int place) {
        return place >= start && place < end;
    }

    /** Whether it has words enough to ask for something. */
    boolean says(String text) {
        return Words.of(text.substring(start, end)).size() > FEW_WORDS;
    }
}
