package org.misecue.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.WeakHashMap;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.util.BytesRef;

/**
 * The words of an index, by what they share with others: their stem, their sound. What is read of an index once is kept, as
 * its parts never change; a word whose last passage is gone stays known, and finds nothing.
 */
final class Vocabulary {

    private final Set<Object> partsRead = Collections.newSetFromMap(new WeakHashMap<>());
    private final Map<String, Set<String>> byStem = new HashMap<>();
    private final Map<String, Set<String>> bySound = new HashMap<>();
    private final Set<String> words = new HashSet<>();
    private final List<String> all = new ArrayList<>();

    /** What was added to the index since. */
    synchronized Vocabulary read(IndexReader index) throws IOException {
        for (LeafReaderContext part : index.leaves()) {
            if (partsRead.add(part.reader().getCoreCacheHelper().getKey())) {
                for (String field : Terms.ALL) {
                    org.apache.lucene.index.Terms terms = part.reader().terms(field);
                    if (terms != null) {
                        add(terms.iterator());
                    }
                }
            }
        }
        return this;
    }

    private void add(TermsEnum terms) throws IOException {
        for (BytesRef term = terms.next(); term != null; term = terms.next()) {
            String word = term.utf8ToString();
            if (words.add(word)) {
                all.add(word);
                Forms forms = Forms.of(word);
                byStem.computeIfAbsent(forms.stem(), stem -> new TreeSet<>()).add(word);
                if (!forms.sound().isEmpty()) {
                    bySound.computeIfAbsent(forms.sound(), sound -> new TreeSet<>())
                            .add(word);
                }
            }
        }
    }

    /** Each once, in the order in which they were read. */
    synchronized List<String> all() {
        return List.copyOf(all);
    }

    synchronized boolean has(String word) {
        return words.contains(word);
    }

    /** The word itself among them, where it is known. */
    synchronized List<String> formsOf(Token token) {
        return List.copyOf(byStem.getOrDefault(token.stem(), Set.of()));
    }

    /** Itself and its forms among them; none for a word whose sound tells too little. */
    synchronized List<String> soundingLike(Token token) {
        return List.copyOf(bySound.getOrDefault(token.sound(), Set.of()));
    }
}
