package org.misecue.search;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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

    private Beginnings() {}

    /** Those in most passages; the word itself is not among them. */
    static List<String> of(Token begun, IndexReader reader) throws IOException {
        if (begun.word().length() < LEAST_LETTERS) {
            return List.of();
        }
        Map<String, Integer> often = new TreeMap<>();
        for (String field : Terms.ALL) {
            org.apache.lucene.index.Terms terms = MultiTerms.getTerms(reader, field);
            if (terms != null) {
                count(new BytesRef(begun.word()), terms.iterator(), often);
            }
        }
        return often.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .limit(MOST)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static void count(BytesRef begun, TermsEnum terms, Map<String, Integer> often) throws IOException {
        if (terms.seekCeil(begun) == TermsEnum.SeekStatus.END) {
            return;
        }
        for (BytesRef term = terms.term(); term != null && StringHelper.startsWith(term, begun); term = terms.next()) {
            if (term.length > begun.length) {
                often.merge(term.utf8ToString(), terms.docFreq(), Integer::sum);
            }
        }
    }
}
