package org.misecue.search;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.SortedDocValuesField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.FieldDoc;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.Sort;
import org.apache.lucene.search.SortField;
import org.apache.lucene.search.TopFieldCollectorManager;
import org.apache.lucene.util.BytesRef;

/** What an index is over: one episode, or an archive of them. */
sealed interface Scope {

    /** A document that Lucene found. */
    record Found(int document, double score, Path episode) {

        Found scoring(double other) {
            return new Found(document, other, episode);
        }
    }

    /** Best first. */
    List<Found> best(IndexSearcher searcher, Query query, int most) throws IOException;

    /** For a query without words, by which none is better: of each episode the first. */
    List<Found> some(IndexSearcher searcher, Query query, int most) throws IOException;

    /** What tells an episode's passages from those of others; empty where there are no others. */
    List<Term> of(Path episode);

    record OneEpisode(Path folder) implements Scope {
        @Override
        public List<Found> best(IndexSearcher searcher, Query query, int most) throws IOException {
            List<Found> best = new ArrayList<>();
            for (ScoreDoc found : searcher.search(query, most).scoreDocs) {
                best.add(new Found(found.doc, found.score, folder));
            }
            return best;
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

        @Override
        public List<Found> best(IndexSearcher searcher, Query query, int most) throws IOException {
            List<Found> best = new ArrayList<>();
            // What cannot be among them is passed over as soon as there are so many.
            for (ScoreDoc found :
                    searcher.search(query, new TopFieldCollectorManager(ORDER, most, null, most)).scoreDocs) {
                Object[] order = ((FieldDoc) found).fields;
                best.add(new Found(found.doc, (Float) order[0], Path.of(((BytesRef) order[1]).utf8ToString())));
            }
            return best;
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
