package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A run of words that is done at one go: a sentence, or what stands before or behind its "then". */
record Clause(int start, int end) {

    private static final Pattern CUT =
            Pattern.compile("(?<=[.!?;])\\s+|(?:,|;)?\\h+(?:and\\h+)?(?=then\\b)", Pattern.CASE_INSENSITIVE);
    private static final int FEW_WORDS = 2;
    private static final Set<String> NO_ORDER = Set.of(
            "the", "a", "an", "it", "they", "this", "these", "do", "don't", "you", "your", "there", "if", "until");

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

    /** Whether it asks for something: "then turn out", but not "the layers should show" or "cover it if it browns". */
    boolean asks(String text) {
        List<Words.Word> words = Words.of(text.substring(start, end)).list();
        if (words.size() <= FEW_WORDS) {
            return false;
        }
        String first = words.get(0).singular().equals("then")
                        || words.get(0).singular().equals("and")
                ? words.get(1).singular()
                : words.get(0).singular();
        return !NO_ORDER.contains(first)
                && words.stream().noneMatch(word -> word.singular().equals("if"));
    }
}
