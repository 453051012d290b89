package org.misecue.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.lucene.analysis.standard.StandardAnalyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.misecue.search.Passage;

/** Indexes the text of passages with Lucene's own analyzer and nothing more: the measure of how fast it can be. */
final class BareLucene {

    private BareLucene() {}

    static void index(List<List<Passage>> episodes, Path folder) {
        IndexWriterConfig config = new IndexWriterConfig(new StandardAnalyzer());
        config.setRAMBufferSizeMB(64);
        try (Directory directory = FSDirectory.open(folder);
                IndexWriter writer = new IndexWriter(directory, config)) {
            for (List<Passage> episode : episodes) {
                for (Passage passage : episode) {
                    Document document = new Document();
                    document.add(new TextField("said", passage.text(), Field.Store.YES));
                    writer.addDocument(document);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
