package org.misecue.search;

import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.lucene.analysis.core.WhitespaceAnalyzer;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.index.IndexWriterConfig.OpenMode;
import org.apache.lucene.index.SegmentInfos;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.TieredMergePolicy;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.misecue.notice.BadInput;

/**
 * Changes the index of an archive. Each episode is changed wholly or not at all, and what was changed is kept by {@link
 * #commit} and {@link #close}; when the program dies before, the index stays as it was kept last. There is one at a time.
 */
public final class ArchiveWriter implements AutoCloseable {

    /** Told apart from the index of an episode, and from one that is written otherwise. */
    private static final Map<String, String> FORMAT = Map.of("misecue", "archive " + MomentIndex.FORMAT);

    /** Larger parts are not made by merging, so that who changes one episode never waits for the archive to be rewritten. */
    private static final double LARGEST_MERGED_MB = 8;

    /** Who changes so many episodes waits a moment longer at the end: each part costs everyone who asks. */
    private static final int MANY = 200;

    private static final double LARGEST_MERGED_FOR_MANY_MB = 64;

    private static final double BUFFER_MB = 64;
    private static final String SHARED = "shared";
    private static final Term ALL_SHARED = new Term(SHARED, SHARED);

    private final IndexPlace place;
    private final Directory directory;
    private final IndexWriter writer;
    private final TieredMergePolicy merging;
    private final Set<Set<String>> shared;
    private int changed;

    private ArchiveWriter(
            IndexPlace place,
            Directory directory,
            IndexWriter writer,
            TieredMergePolicy merging,
            Set<Set<String>> shared) {
        this.place = place;
        this.directory = directory;
        this.writer = writer;
        this.merging = merging;
        this.shared = shared;
    }

    static boolean isBegun(IndexPlace place) {
        try (Directory directory = FSDirectory.open(place.folder())) {
            return SegmentInfos.readLatestCommit(directory).getUserData().equals(FORMAT);
        } catch (IOException e) {
            return false;
        }
    }

    /** An empty index in place of whatever is there. */
    static void begin(IndexPlace place) throws IOException {
        place.anew(() -> {
            try (Directory directory = FSDirectory.open(place.folder())) {
                writer(directory, OpenMode.CREATE, new TieredMergePolicy()).close();
            }
        });
    }

    static ArchiveWriter open(IndexPlace place) {
        try {
            Directory directory = FSDirectory.open(place.folder());
            try {
                Set<Set<String>> shared = shared(directory);
                TieredMergePolicy merging = new TieredMergePolicy();
                merging.setMaxMergedSegmentMB(LARGEST_MERGED_MB);
                IndexWriter writer = writer(directory, OpenMode.APPEND, merging);
                return new ArchiveWriter(place, directory, writer, merging, shared);
            } catch (IOException e) {
                directory.close();
                throw e;
            }
        } catch (IOException e) {
            throw place.unwritable(e);
        }
    }

    private static IndexWriter writer(Directory directory, OpenMode mode, TieredMergePolicy merging)
            throws IOException {
        IndexWriterConfig config = new IndexWriterConfig(new WhitespaceAnalyzer());
        config.setOpenMode(mode);
        config.setMergePolicy(merging);
        config.setRAMBufferSizeMB(BUFFER_MB);
        IndexWriter writer = new IndexWriter(directory, config);
        writer.setLiveCommitData(FORMAT.entrySet(), false);
        return writer;
    }

    private static Set<Set<String>> shared(Directory directory) throws IOException {
        try (DirectoryReader reader = DirectoryReader.open(directory)) {
            Query all = new TermQuery(ALL_SHARED);
            return new HashSet<>(OtherNames.groups(all, new IndexSearcher(reader)));
        }
    }

    /**
     * Names that all episodes share are kept once. They take the place of those that were shared before.
     *
     * @param otherNames groups of names for the same thing
     */
    public void share(List<Set<String>> otherNames) {
        Set<Set<String>> groups = new HashSet<>(otherNames);
        if (groups.equals(shared)) {
            return;
        }
        List<Document> documents = OtherNames.documents(otherNames);
        documents.forEach(document -> document.add(new StringField(SHARED, SHARED, Field.Store.NO)));
        write(() -> writer.updateDocuments(ALL_SHARED, documents));
        shared.clear();
        shared.addAll(groups);
    }

    /**
     * Puts one episode in place of what was there of it.
     *
     * @param episode its folder within the archive, with {@code /} between the parts
     * @param otherNames groups of names for the same thing
     */
    public void put(String episode, Shelved shelved, List<Passage> passages, List<Set<String>> otherNames) {
        List<Set<String>> own =
                otherNames.stream().filter(group -> !shared.contains(group)).toList();
        List<Field> name = Scope.Archive.name(episode);
        Iterable<Document> documents =
                Stream.concat(EpisodeDocuments.of(passages, own), Stream.of(ShelfCard.of(episode, shelved)))
                        .peek(document -> name.forEach(document::add))::iterator;
        write(() -> writer.updateDocuments(all(episode), documents));
        changed++;
    }

    public void remove(String episode) {
        write(() -> writer.deleteDocuments(all(episode)));
    }

    /** Keeps what was changed until now. */
    public void commit() {
        write(writer::commit);
    }

    @Override
    public void close() {
        write(() -> {
            try (directory;
                    writer) {
                if (changed >= MANY) {
                    merging.setMaxMergedSegmentMB(LARGEST_MERGED_FOR_MANY_MB);
                    writer.maybeMerge();
                }
            }
        });
    }

    private static Term all(String episode) {
        return new Term(Scope.Archive.EPISODE, episode);
    }

    private interface Change {
        void make() throws IOException;
    }

    /** @throws BadInput where the disk is full or the like */
    private void write(Change change) {
        try {
            change.make();
        } catch (IOException e) {
            throw place.unwritable(e);
        }
    }
}
