package org.misecue.search;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;

/** One search: first for all that is asked, then for words that begin as the last one does, then for any of it. */
final class MomentSearch {

    /** More passages are looked at than are shown, since near repeats become one. */
    private static final int LOOKED_AT_PER_HIT = 5;

    private static final int LOOKED_AT_MOST = 10_000;

    private final IndexSearcher searcher;
    private final Scope scope;

    MomentSearch(IndexSearcher searcher, Scope scope) {
        this.searcher = searcher;
        this.scope = scope;
    }

    FindResult find(String query, Ask ask, int limit) throws IOException {
        Folding hits = new Folding(limit);
        List<Wanted> strict = Plan.strict(ask, searcher);
        add(strict, ask, true, hits);
        if (hits.isFull() || strict.isEmpty()) {
            return result(query, hits, Optional.empty());
        }
        Spelling spelling = new Spelling(searcher.getIndexReader());
        List<String> longer = longer(ask, hits, spelling);
        if (!longer.isEmpty()) {
            add(Plan.begun(ask, longer, searcher), ask, true, hits); // after those with the word itself
        }
        if (!hits.isEmpty()) {
            return result(query, hits, Optional.empty());
        }
        add(Plan.loose(ask, longer, spelling), ask, false, hits);
        return result(query, hits, spelling.corrected(query, ask));
    }

    /**
     * What the last word may become when it is written to its end. Over an archive somebody looks while typing; who asks
     * one episode has asked, and only a word that nobody said is taken for the beginning of others.
     */
    private List<String> longer(Ask ask, Folding hits, Spelling spelling) throws IOException {
        boolean goesOn =
                ask.goingOn() && (scope instanceof Scope.Archive || hits.isEmpty() && !spelling.isWord(ask.begun()));
        List<String> longer = goesOn ? Beginnings.of(ask.begun(), searcher.getIndexReader()) : List.of();
        if (!longer.isEmpty()) {
            spelling.accept(ask.begun());
        }
        return longer;
    }

    private void add(List<Wanted> plan, Ask ask, boolean all, Folding hits) throws IOException {
        Spotter spotter = new Spotter(plan);
        double most = hits.leastScore();
        int lookedAt = (int) Math.min(LOOKED_AT_MOST, (long) hits.limit() * LOOKED_AT_PER_HIT);
        Query query = new Queries(searcher.getIndexReader()).of(plan, ask.step(), all);
        for (Scope.Found found : scope.best(searcher, query, lookedAt)) {
            if (hits.isFull()) {
                return;
            }
            Window window = WindowDocument.window(searcher.storedFields().document(found.document()));
            spotter.hit(found.episode(), window, Math.min(found.score(), most)).ifPresent(hits::add);
        }
    }

    private FindResult result(String query, Folding hits, Optional<String> suggestion) {
        return new FindResult(query, hits.hits(), suggestion, scope instanceof Scope.Archive);
    }
}
