package org.misecue.search;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TermQuery;

/** What is remembered of an episode, in a document beside its own, so that both are written together or not at all. */
final class ShelfCard {

    private static final String CARD = "card";
    private static final String STAMP = "stamp";
    private static final String NOTE = "note";
    private static final Query ALL = new TermQuery(new Term(CARD, CARD));

    private ShelfCard() {}

    static Document of(String episode, Shelved shelved) {
        Document document = new Document();
        document.add(new StringField(CARD, CARD, Field.Store.NO));
        document.add(new StoredField(Scope.Archive.EPISODE, episode));
        document.add(new StoredField(STAMP, shelved.stamp()));
        shelved.notes().forEach(note -> document.add(new StoredField(NOTE, note)));
        return document;
    }

    static Map<String, Shelved> all(IndexSearcher searcher) throws IOException {
        Map<String, Shelved> all = new TreeMap<>();
        for (ScoreDoc found : searcher.search(ALL, Math.max(1, searcher.count(ALL))).scoreDocs) {
            Document document = searcher.storedFields().document(found.doc);
            Shelved shelved = new Shelved(document.get(STAMP), List.of(document.getValues(NOTE)));
            all.put(document.get(Scope.Archive.EPISODE), shelved);
        }
        return all;
    }
}
