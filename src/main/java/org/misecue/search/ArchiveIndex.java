package org.misecue.search;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.lucene.index.CorruptIndexException;
import org.apache.lucene.index.IndexFormatTooNewException;
import org.apache.lucene.index.IndexFormatTooOldException;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.SearcherFactory;
import org.apache.lucene.search.SearcherManager;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.misecue.notice.BadInput;

/**
 * Finds the moment at which something is said in a whole archive of episodes. There is one index for all, in the archive's
 * {@code .misecue/index}. It is asked as one episode's is, see {@link MomentIndex}, but the last word is also taken for the
 * beginning of others, so that it can be asked at each letter; what has the very word comes first.
 *
 * <p>Open it once and keep it: it can be asked by several threads, also while it is written to by this or another program.
 * What was written is found after {@link #refresh}.
 */
public final class ArchiveIndex implements AutoCloseable {

    private final IndexPlace place;
    private final Directory directory;
    private final SearcherManager searchers;
    private final Vocabulary words = new Vocabulary();

    private ArchiveIndex(IndexPlace place, Directory directory, SearcherManager searchers) {
        this.place = place;
        this.directory = directory;
        this.searchers = searchers;
    }

    /**
     * Opens the archive's index. Where there is none, or one that cannot be read any more, an empty one is begun.
     *
     * @throws BadInput where the folder can't be read or written to
     */
    public static ArchiveIndex open(Path archive) {
        IndexPlace place = IndexPlace.in(archive);
        try {
            if (!ArchiveWriter.isBegun(place)) {
                ArchiveWriter.begin(place);
            }
            return open(place);
        } catch (IOException e) {
            throw place.unwritable(e);
        }
    }

    private static ArchiveIndex open(IndexPlace place) throws IOException {
        Directory directory = FSDirectory.open(place.folder());
        try {
            return new ArchiveIndex(place, directory, searchers(directory));
        } catch (CorruptIndexException
                | IndexFormatTooNewException
                | IndexFormatTooOldException
                | EOFException
                | NoSuchFileException e) {
            ArchiveWriter.begin(place); // all that was there can be read from the episodes again
            return new ArchiveIndex(place, directory, searchers(directory));
        } catch (IOException e) {
            directory.close();
            throw e;
        }
    }

    private static SearcherManager searchers(Directory directory) throws IOException {
        return new SearcherManager(directory, new SearcherFactory());
    }

    /**
     * @param most how many hits at most, from 1
     * @throws BadInput where the index cannot be read, or the query has no word
     */
    public FindResult find(String query, int most) {
        Ask ask = Ask.telling(query);
        return ask(searcher -> new MomentSearch(searcher, words.read(searcher.getIndexReader()), new Scope.Archive())
                .find(query, ask, Math.max(1, most)));
    }

    /** What it has of each episode, by the episode's name in the order of the names. */
    public Map<String, Shelved> episodes() {
        return ask(ShelfCard::all);
    }

    /**
     * Puts one episode in place of what was there of it. It is written when this returns, or else the old one stays.
     *
     * @param episode its folder within the archive, with {@code /} between the parts
     * @param otherNames groups of names for the same thing
     * @throws BadInput where the index can't be written, or is just being written
     */
    public void update(String episode, List<Passage> passages, List<Set<String>> otherNames) {
        try (ArchiveWriter writer = writer()) {
            writer.put(episode, new Shelved("", List.of()), passages, otherNames);
        }
        refresh();
    }

    /** @throws BadInput where the index can't be written, or is just being written */
    public void remove(String episode) {
        try (ArchiveWriter writer = writer()) {
            writer.remove(episode);
        }
        refresh();
    }

    /**
     * For many changes at once.
     *
     * @throws BadInput where the index can't be written, or is just being written
     */
    public ArchiveWriter writer() {
        return ArchiveWriter.open(place);
    }

    /** Finds from now on what was written since it was opened or refreshed, by whichever program. */
    public void refresh() {
        try {
            searchers.maybeRefreshBlocking();
        } catch (IOException e) {
            throw place.unreadable(e);
        }
    }

    @Override
    public void close() {
        try {
            searchers.close();
            directory.close();
        } catch (IOException e) {
            throw place.unreadable(e);
        }
    }

    private interface Question<T> {
        T of(IndexSearcher searcher) throws IOException;
    }

    private <T> T ask(Question<T> question) {
        try {
            IndexSearcher searcher = searchers.acquire();
            try {
                return question.of(searcher);
            } finally {
                searchers.release(searcher);
            }
        } catch (IOException e) {
            throw place.unreadable(e);
        }
    }
}
