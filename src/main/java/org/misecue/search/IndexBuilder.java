package org.misecue.search;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import org.apache.lucene.analysis.core.WhitespaceAnalyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.NIOFSDirectory;

/** Writes the index of one episode. Lucene keeps the old one until the new one is committed. */
final class IndexBuilder {

    private IndexBuilder() {}

    static void build(IndexPlace place, List<Passage> passages, List<Set<String>> otherNames) {
        try {
            place.anew(() -> write(place, passages, otherNames));
        } catch (IOException e) {
            throw place.unwritable(e);
        }
    }

    private static void write(IndexPlace place, List<Passage> passages, List<Set<String>> otherNames)
            throws IOException {
        IndexWriterConfig config = new IndexWriterConfig(new WhitespaceAnalyzer());
        config.setOpenMode(IndexWriterConfig.OpenMode.CREATE);
        config.setCommitOnClose(false);
        try (NIOFSDirectory directory = new NIOFSDirectory(place.folder());
                IndexWriter writer = new IndexWriter(directory, config)) {
            Iterable<Document> documents = EpisodeDocuments.of(passages, otherNames)::iterator;
            writer.addDocuments(documents);
            writer.forceMerge(1);
            writer.commit();
        }
    }
}
