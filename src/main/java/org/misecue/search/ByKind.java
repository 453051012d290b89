package org.misecue.search;

import java.io.IOException;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.search.CollectionTerminatedException;
import org.apache.lucene.search.Collector;
import org.apache.lucene.search.CollectorManager;
import org.apache.lucene.search.FilterCollector;
import org.apache.lucene.search.FilterLeafCollector;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.LeafCollector;
import org.apache.lucene.search.MultiCollector;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TopDocsCollector;

/** Gathers the best of each kind of passage in one pass: to look its words up is most of what a query costs. */
final class ByKind implements CollectorManager<Collector, Map<Passage.Kind, TopDocsCollector<?>>> {

    private final Map<Passage.Kind, TopDocsCollector<?>> best = new LinkedHashMap<>();

    private ByKind(List<Passage.Kind> kinds, int most, Scope scope) throws IOException {
        for (Passage.Kind kind : kinds) {
            best.put(kind, scope.gathering(most).newCollector());
        }
    }

    /** Kind after kind in the order asked for, of each the best first. */
    static List<Scope.Found> best(Query query, List<Passage.Kind> kinds, int most, Scope scope, IndexSearcher searcher)
            throws IOException {
        return searcher.search(query, new ByKind(kinds, most, scope)).values().stream()
                .flatMap(collector -> scope.found(collector.topDocs()).stream())
                .toList();
    }

    /** There is one at a time: nothing is searched in several threads. */
    @Override
    public Collector newCollector() {
        return MultiCollector.wrap(best.entrySet().stream()
                .map(each -> new OfKind(each.getValue(), each.getKey()))
                .toList());
    }

    @Override
    public Map<Passage.Kind, TopDocsCollector<?>> reduce(Collection<Collector> collectors) {
        return best;
    }

    private static final class OfKind extends FilterCollector {

        private final Passage.Kind kind;

        OfKind(Collector all, Passage.Kind kind) {
            super(all);
            this.kind = kind;
        }

        @Override
        public LeafCollector getLeafCollector(LeafReaderContext part) throws IOException {
            PostingsEnum ofKind = part.reader().postings(WindowDocument.term(kind), PostingsEnum.NONE);
            if (ofKind == null) {
                throw new CollectionTerminatedException();
            }
            return new FilterLeafCollector(super.getLeafCollector(part)) {
                @Override
                public void collect(int document) throws IOException {
                    if (ofKind.docID() < document) {
                        ofKind.advance(document);
                    }
                    if (ofKind.docID() == document) {
                        super.collect(document);
                    }
                }
            };
        }
    }
}
