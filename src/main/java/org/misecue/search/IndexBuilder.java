package org.misecue.search;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.apache.lucene.analysis.core.WhitespaceAnalyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.CorruptIndexException;
import org.apache.lucene.index.IndexFormatTooNewException;
import org.apache.lucene.index.IndexFormatTooOldException;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.LockObtainFailedException;
import org.apache.lucene.store.NIOFSDirectory;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Writes the index. Lucene keeps the old one until the new one is committed. */
final class IndexBuilder {

    private IndexBuilder() {}

    /** @param name of the episode, for messages */
    static void build(Path place, String name, List<Passage> passages, List<Set<String>> otherNames) {
        try {
            Files.createDirectories(place);
            try {
                write(place, passages, otherNames);
            } catch (CorruptIndexException | IndexFormatTooOldException | IndexFormatTooNewException e) {
                clear(place); // what was there could not be searched any more
                write(place, passages, otherNames);
            }
        } catch (LockObtainFailedException e) {
            throw new BadInput(Place.of(name), "its index is just being made by another misecue; wait for it", e);
        } catch (IOException e) {
            throw new BadInput(Place.of(name), "its index cannot be written; check that .misecue is writable", e);
        }
    }

    private static void write(Path place, List<Passage> passages, List<Set<String>> otherNames) throws IOException {
        IndexWriterConfig config = new IndexWriterConfig(new WhitespaceAnalyzer());
        config.setOpenMode(IndexWriterConfig.OpenMode.CREATE);
        config.setCommitOnClose(false);
        try (NIOFSDirectory directory = new NIOFSDirectory(place);
                IndexWriter writer = new IndexWriter(directory, config)) {
            for (Window window : Window.over(passages)) {
                writer.addDocument(WindowDocument.of(window));
            }
            for (Document names : OtherNames.documents(otherNames)) {
                writer.addDocument(names);
            }
            writer.forceMerge(1);
            writer.commit();
        }
    }

    private static void clear(Path place) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(place)) {
            for (Path file : files) {
                Files.delete(file);
            }
        }
    }
}
