package org.misecue.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.MultiTerms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.util.BytesRef;
import org.apache.lucene.util.StringHelper;

/** Which words that were said begin like one that is still being written. */
final class Beginnings {

    /** A single letter begins too many words to mean any. */
    private static final int LEAST_LETTERS = 2;

    private static final int MOST = 20;

    private record Said(String word, int often) {}

    private Beginnings() {}

    /** Those that are said most; the word itself is not among them. */
    static List<String> of(Token begun, IndexReader reader) throws IOException {
        org.apache.lucene.index.Terms terms = MultiTerms.getTerms(reader, Terms.FIELD);
        if (terms == null || begun.word().length() < LEAST_LETTERS) {
            return List.of();
        }
        return words(new BytesRef(begun.word()), terms.iterator()).stream()
                .sorted(Comparator.comparingInt(Said::often).reversed().thenComparing(Said::word))
                .limit(MOST)
                .map(Said::word)
                .toList();
    }

    private static List<Said> words(BytesRef begun, TermsEnum terms) throws IOException {
        List<Said> words = new ArrayList<>();
        if (terms.seekCeil(begun) == TermsEnum.SeekStatus.END) {
            return words;
        }
        for (BytesRef term = terms.term(); term != null && StringHelper.startsWith(term, begun); term = terms.next()) {
            if (term.length > begun.length) {
                words.add(new Said(term.utf8ToString(), terms.docFreq()));
            }
        }
        return words;
    }
}
