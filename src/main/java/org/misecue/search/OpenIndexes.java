package org.misecue.search;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexNotFoundException;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.MultiReader;
import org.apache.lucene.store.NIOFSDirectory;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** The indexes of several episodes, searched as one. */
record OpenIndexes(List<Path> episodes, List<IndexReader> readers) implements AutoCloseable {

    /** @throws BadInput where an episode has no index */
    static OpenIndexes of(List<Path> episodes) throws IOException {
        OpenIndexes open = new OpenIndexes(episodes, new ArrayList<>());
        try {
            for (Path episode : episodes) {
                open.readers.add(reader(episode));
            }
            return open;
        } catch (IOException | RuntimeException e) {
            open.close();
            throw e;
        }
    }

    /** One reader over all; it need not be closed. */
    IndexReader together() throws IOException {
        return readers.size() == 1 ? readers.get(0) : new MultiReader(readers.toArray(new IndexReader[0]), false);
    }

    /** @param document its number in {@link #together()} */
    Path episodeOf(int document) {
        int first = 0;
        for (int i = 0; i < readers.size(); i++) {
            first += readers.get(i).maxDoc();
            if (document < first) {
                return episodes.get(i);
            }
        }
        throw new IllegalArgumentException("no document " + document);
    }

    @Override
    public void close() throws IOException {
        for (IndexReader reader : readers) {
            reader.close();
        }
    }

    private static IndexReader reader(Path episode) throws IOException {
        try {
            // Plain file reads open faster than memory maps, and an episode's index is small.
            return DirectoryReader.open(new NIOFSDirectory(MomentIndex.place(episode)));
        } catch (IndexNotFoundException e) {
            throw new BadInput(Place.of(episode.toString()), "there is no index yet; make it with: index", e);
        }
    }
}
