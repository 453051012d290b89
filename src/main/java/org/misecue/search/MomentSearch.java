package org.misecue.search;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;

/** One search: first for all that is asked, then for any of it. */
final class MomentSearch {

    /** More passages are looked at than are shown, since near repeats become one. */
    private static final int LOOKED_AT_PER_HIT = 5;

    private static final int LOOKED_AT_MOST = 10_000;

    private final OpenIndexes open;
    private final IndexReader reader;
    private final IndexSearcher searcher;

    MomentSearch(OpenIndexes open) throws IOException {
        this.open = open;
        this.reader = open.together();
        this.searcher = new IndexSearcher(reader);
        searcher.setQueryCache(null); // it is asked once
    }

    FindResult find(String query, Ask ask, int limit) throws IOException {
        List<Wanted> strict = Plan.strict(ask, searcher);
        List<Hit> hits = hits(strict, Queries.of(strict, ask.step(), true), limit);
        if (!hits.isEmpty() || strict.isEmpty()) {
            return new FindResult(query, hits, Optional.empty(), open.episodes());
        }
        Spelling spelling = new Spelling(reader);
        List<Wanted> loose = Plan.loose(ask, spelling);
        List<Hit> near = hits(loose, Queries.of(loose, ask.step(), false), limit);
        return new FindResult(query, near, spelling.corrected(query, ask), open.episodes());
    }

    private List<Hit> hits(List<Wanted> plan, Query query, int limit) throws IOException {
        Spotter spotter = new Spotter(plan);
        List<Hit> hits = new ArrayList<>();
        int lookedAt = (int) Math.min(LOOKED_AT_MOST, (long) limit * LOOKED_AT_PER_HIT);
        for (ScoreDoc found : searcher.search(query, Math.max(1, lookedAt)).scoreDocs) {
            Window window = WindowDocument.window(searcher.storedFields().document(found.doc));
            spotter.hit(open.episodeOf(found.doc), window, found.score).ifPresent(hits::add);
        }
        return Folding.fold(hits).stream().limit(limit).toList();
    }
}
