package org.misecue.search;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.SortedDocValuesField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.CollectorManager;
import org.apache.lucene.search.FieldDoc;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.SortField;
import org.apache.lucene.search.TopDocs;
import org.apache.lucene.search.TopDocsCollector;
import org.apache.lucene.search.TopFieldCollectorManager;
import org.apache.lucene.search.TopScoreDocCollectorManager;
import org.apache.lucene.util.BytesRef;

/** What an index is over: one episode, or an archive of them. */
sealed interface Scope {

    /** A document that Lucene found. */
    record Found(int document, double score, Path episode) {

        Found scoring(double other) {
            return new Found(document, other, episode);
        }
    }

    /** What gathers the best. */
    CollectorManager<? extends TopDocsCollector<?>, ? extends TopDocs> gathering(int most);

    /** What it gathered, best first. */
    List<Found> found(TopDocs gathered);

    /** Best first. */
    default List<Found> best(IndexSearcher searcher, Query query, int most) throws IOException {
        return found(searcher.search(query, gathering(most)));
    }

    /** For a query without words, by which none is better: of each episode the first. */
    List<Found> some(IndexSearcher searcher, Query query, int most) throws IOException;

    /** What tells an episode's passages from those of others; empty where there are no others. */
    List<Term> of(Path episode);

    record OneEpisode(Path folder) implements Scope {
        @Override
        public TopScoreDocCollectorManager gathering(int most) {
            return new TopScoreDocCollectorManager(most, null, most);
        }

        @Override
        public List<Found> found(TopDocs gathered) {
            return Stream.of(gathered.scoreDocs)
                    .map(found -> new Found(found.doc, found.score, folder))
                    .toList();
        }

        @Override
        public List<Found> some(IndexSearcher searcher, Query query, int most) throws IOException {
            return best(searcher, query, most);
        }

        @Override
        public List<Term> of(Path episode) {
            return List.of();
        }
    }

    /** Documents name their episode. What is equally good comes in the order of the names, whenever it was indexed. */
    record Archive() implements Scope {

        static final String EPISODE = "episode";

        private static final Sort ORDER =
                new Sort(SortField.FIELD_SCORE, new SortField(EPISODE, SortField.Type.STRING), SortField.FIELD_DOC);

        /** What each document of an episode carries. */
        static List<Field> name(String episode) {
            return List.of(
                    new StringField(EPISODE, episode, Field.Store.NO),
                    new SortedDocValuesField(EPISODE, new BytesRef(episode)));
        }

        /** What cannot be among the best is passed over as soon as there are so many. */
        @Override
        public TopFieldCollectorManager gathering(int most) {
            return new TopFieldCollectorManager(ORDER, most, null, most);
        }

        @Override
        public List<Found> found(TopDocs gathered) {
            return Stream.of(gathered.scoreDocs).map(Archive::found).toList();
        }

        private static Found found(ScoreDoc found) {
            Object[] order = ((FieldDoc) found).fields;
            return new Found(found.doc, (Float) order[0], Path.of(((BytesRef) order[1]).utf8ToString()));
        }

        @Override
        public List<Found> some(IndexSearcher searcher, Query query, int most) throws IOException {
            Map<Path, Found> first = new LinkedHashMap<>();
            for (Found found : best(searcher, query, Math.max(1, searcher.count(query)))) {
                first.putIfAbsent(found.episode(), found);
            }
            return first.values().stream().limit(most).toList();
        }

        @Override
        public List<Term> of(Path episode) {
            return List.of(new Term(EPISODE, episode.toString()));
        }
    }
}
