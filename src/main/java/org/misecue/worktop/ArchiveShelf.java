package org.misecue.worktop;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.misecue.episode.Archive;
import org.misecue.notice.BadInput;
import org.misecue.search.ArchiveIndex;
import org.misecue.search.ArchiveWriter;
import org.misecue.search.FindResult;
import org.misecue.search.Shelved;
import org.misecue.worktop.ShelfEpisode.Reading;
import org.misecue.worktop.ShelfEpisode.UsualPantry;

/**
 * All episodes of an archive, to be searched in. Open it once and keep it: {@link #find} answers from the index as it is,
 * also while {@link #freshen} brings in what has changed on disk.
 */
public final class ArchiveShelf implements AutoCloseable {

    /** On all processors; so many, because that is what is in memory. */
    private static final int READ_AT_ONCE = 20;

    /** Keeping costs a little each time, and what was not kept is read again when the program dies. */
    private static final int KEPT_AT_ONCE = 10 * READ_AT_ONCE;

    /** Hears how far the indexing has come. */
    public interface Progress {
        /** @param done of so many that have changed */
        void at(int done, int changed, String episode);
    }

    private final Archive archive;
    private final Optional<Path> home;
    private final ArchiveIndex index;

    private ArchiveShelf(Archive archive, Optional<Path> home, ArchiveIndex index) {
        this.archive = archive;
        this.home = home;
        this.index = index;
    }

    /**
     * Looks at no episode yet.
     *
     * @param home where the person keeps what holds for every episode
     * @throws BadInput if this is no archive, or its {@code .misecue} cannot be written to
     */
    public static ArchiveShelf open(Path folder, Optional<Path> home) {
        Archive archive = Archive.open(folder);
        archive.state().ready();
        return new ArchiveShelf(archive, home, ArchiveIndex.open(archive.folder()));
    }

    /** The folder of the archive; the episodes that hits name lie in it. */
    public Path folder() {
        return archive.folder();
    }

    /**
     * @param most how many hits at most, from 1
     * @throws BadInput where the query has no word
     */
    public FindResult find(String query, int most) {
        return index.find(query, most);
    }

    /**
     * Indexes the episodes that have changed since they were indexed last, and forgets those that are gone. An episode
     * that cannot be read wholly is noted, and the others go on.
     *
     * @throws BadInput where there is no episode, another misecue is just doing so, or the person's own pantry is wrong
     */
    public synchronized Shelving freshen(Progress progress) {
        List<Path> folders = archive.someEpisodes();
        index.refresh();
        Map<String, Shelved> before = index.episodes();
        UsualPantry usual = UsualPantry.at(home);
        Set<String> gone = new TreeSet<>(before.keySet());
        List<ShelfEpisode> changed = new ArrayList<>();
        for (Path folder : folders) {
            ShelfEpisode episode = ShelfEpisode.at(folder, archive.name(folder), home, usual);
            gone.remove(episode.name());
            if (!episode.isAsIn(before)) {
                changed.add(episode);
            }
        }
        if (!changed.isEmpty() || !gone.isEmpty()) {
            write(changed, gone, usual, progress);
        }
        Set<String> indexed = changed.stream().map(ShelfEpisode::name).collect(Collectors.toSet());
        return new Shelving(index.episodes(), indexed, gone);
    }

    private void write(List<ShelfEpisode> changed, Set<String> gone, UsualPantry usual, Progress progress) {
        try (ArchiveWriter writer = index.writer()) {
            writer.share(Findable.names(usual.pantry()));
            gone.forEach(writer::remove);
            for (int done = 0; done < changed.size(); done += READ_AT_ONCE) {
                List<ShelfEpisode> next = changed.subList(done, Math.min(changed.size(), done + READ_AT_ONCE));
                progress.at(done, changed.size(), next.get(0).name());
                List<Reading> readings =
                        next.parallelStream().map(ShelfEpisode::read).toList();
                for (int i = 0; i < next.size(); i++) {
                    put(next.get(i), readings.get(i), writer);
                }
                if (done % KEPT_AT_ONCE == 0) {
                    writer.commit();
                    index.refresh();
                }
            }
        }
        index.refresh();
    }

    private static void put(ShelfEpisode episode, Reading reading, ArchiveWriter writer) {
        Shelved shelved = new Shelved(episode.stamp(), reading.notes());
        writer.put(episode.name(), shelved, reading.passages(), reading.names());
    }

    @Override
    public void close() {
        index.close();
    }
}
