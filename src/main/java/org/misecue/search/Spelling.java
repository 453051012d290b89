package org.misecue.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.spell.DirectSpellChecker;
import org.apache.lucene.search.spell.SuggestWord;

/** Which words that were said are spelt like one that was not. */
final class Spelling {

    private static final int MOST = 3;

    /** So many words are held against the word for each that is wanted. */
    private static final int INSPECTED = 100;

    private static final int LEAST_LETTERS = 3;

    /** One wrong letter in four, two in seven. */
    private static final float LEAST_LIKENESS = 0.7f;

    private static final Comparator<SuggestWord> NEAREST = Comparator.comparing((SuggestWord found) -> -found.score)
            .thenComparing(found -> -found.freq)
            .thenComparing(found -> found.string);

    private final IndexReader reader;
    private final Vocabulary words;
    private final Map<String, List<String>> known = new LinkedHashMap<>();

    Spelling(IndexReader reader, Vocabulary words) {
        this.reader = reader;
        this.words = words;
    }

    /** Takes a word for well spelt. */
    void accept(Token token) {
        known.put(token.word(), List.of());
    }

    /** Nearest first; none for a word that was said in some form or is a name. */
    List<String> near(Token token) throws IOException {
        List<String> near = known.get(token.word());
        if (near == null) {
            near = isWord(token) ? List.of() : lookUp(token.word());
            known.put(token.word(), near);
        }
        return near;
    }

    /** The query with each word that nobody said replaced by the nearest; nothing where there is none to replace. */
    Optional<String> corrected(String query, Ask ask) throws IOException {
        String corrected = query;
        for (Ask.Part part : ask.parts()) {
            for (Token token : part.amount().isPresent() ? List.<Token>of() : part.tokens()) {
                List<String> near = near(token);
                if (!near.isEmpty()) {
                    corrected = replaced(corrected, token.word(), near.get(0));
                }
            }
        }
        return corrected.equals(query) ? Optional.empty() : Optional.of(corrected);
    }

    private static String replaced(String query, String word, String by) {
        StringBuilder out = new StringBuilder();
        int from = 0;
        for (Token token : Token.of(query)) {
            if (token.word().equals(word)) {
                out.append(query, from, token.from()).append(by);
                from = token.to();
            }
        }
        return out.append(query.substring(from)).toString();
    }

    /** Whether it was said in some form or is a name. */
    boolean isWord(Token token) throws IOException {
        return words.has(token.word()) || !words.formsOf(token).isEmpty() || OtherNames.knows(token, reader);
    }

    private List<String> lookUp(String word) throws IOException {
        DirectSpellChecker checker = new DirectSpellChecker();
        checker.setMinPrefix(0);
        checker.setAccuracy(LEAST_LIKENESS);
        checker.setMinQueryLength(LEAST_LETTERS);
        checker.setMaxInspections(INSPECTED);
        checker.setThresholdFrequency(0);
        List<SuggestWord> near = new ArrayList<>();
        for (String field : Terms.ALL) {
            near.addAll(List.of(checker.suggestSimilar(new Term(field, word), MOST, reader)));
        }
        return near.stream()
                .sorted(NEAREST)
                .map(found -> found.string)
                .distinct()
                .limit(MOST)
                .toList();
    }
}
