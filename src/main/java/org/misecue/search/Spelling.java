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
import org.apache.lucene.search.spell.LuceneLevenshteinDistance;
import org.apache.lucene.search.spell.StringDistance;

/** Which words that were said are spelt like one that was not. */
final class Spelling {

    private static final int MOST = 3;

    /** Letters that are wrong, missing or too many; two that are swapped are one. */
    private static final int MOST_WRONG = 2;

    private static final StringDistance LETTERS = new LuceneLevenshteinDistance();

    private static final int LEAST_LETTERS = 3;

    /** One wrong letter in four, two in seven. */
    private static final float LEAST_LIKENESS = 0.7f;

    /** @param likeness up to 1 */
    private record Near(String word, float likeness, int often) {}

    private static final Comparator<Near> NEAREST = Comparator.comparing(Near::likeness)
            .thenComparing(Near::often)
            .reversed()
            .thenComparing(Near::word);

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
        return !words.formsOf(token).isEmpty() || OtherNames.knows(token, reader);
    }

    private List<String> lookUp(String word) throws IOException {
        List<Near> near = new ArrayList<>();
        if (word.length() >= LEAST_LETTERS) {
            for (String other : words.all()) {
                float likeness = mayBeNear(word, other) ? LETTERS.getDistance(word, other) : 0;
                if (likeness >= LEAST_LIKENESS) {
                    near.add(new Near(other, likeness, often(other)));
                }
            }
        }
        return near.stream().sorted(NEAREST).limit(MOST).map(Near::word).toList();
    }

    private int often(String word) throws IOException {
        int often = 0;
        for (String field : Terms.ALL) {
            often += reader.docFreq(new Term(field, word));
        }
        return often;
    }

    /** Told at a glance for nearly all that are not: they are of another length, or have other letters. */
    private static boolean mayBeNear(String word, String other) {
        return Math.abs(word.length() - other.length()) <= MOST_WRONG
                && Integer.bitCount(letters(word) ^ letters(other)) <= 2 * MOST_WRONG;
    }

    /** A bit for each letter that is in it, whatever letters share one. */
    private static int letters(String word) {
        int letters = 0;
        for (int i = 0; i < word.length(); i++) {
            letters |= 1 << word.charAt(i);
        }
        return letters;
    }
}
