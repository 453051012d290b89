package org.misecue.desk.find;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.search.FindResult;
import org.misecue.worktop.ArchiveShelf;

/**
 * Finds in all episodes of an archive. What changed on disk is indexed by itself; meanwhile is found what was there before.
 */
final class ArchiveFinder {

    /** Looking through a thousand folders costs a little; nobody notices that it is done this seldom. */
    private static final Duration FRESH = Duration.ofSeconds(20);

    private final Path folder;
    private final Optional<Path> home;
    private @Nullable ArchiveShelf shelf;
    private volatile Indexing now = Indexing.IDLE;
    private volatile long looked = System.nanoTime() - FRESH.toNanos();

    ArchiveFinder(Path folder, Optional<Path> home) {
        this.folder = folder;
        this.home = home;
    }

    /** From the index as it is now. */
    FindResult find(String words, int most) {
        freshen();
        return shelf().find(words, most);
    }

    Indexing indexing() {
        return now;
    }

    /** Begins to look for what has changed, unless that was done just before. */
    synchronized void freshen() {
        if (now.running() || System.nanoTime() - looked < FRESH.toNanos()) {
            return;
        }
        ArchiveShelf open = shelf();
        now = new Indexing(true, 0, 0, "", now.notes());
        CompletableFuture.runAsync(() -> now = freshened(open));
    }

    private Indexing freshened(ArchiveShelf open) {
        try {
            List<String> notes = open.freshen(
                            (done, changed, episode) -> now = new Indexing(true, done, changed, episode, List.of()))
                    .notes();
            return Indexing.ended(notes);
        } catch (BadInput e) {
            return Indexing.ended(List.of(String.valueOf(e.getMessage())));
        } catch (RuntimeException e) {
            System.getLogger("org.misecue.desk").log(System.Logger.Level.ERROR, "", e);
            return Indexing.ended(List.of("The index could not be made; this is a fault of misecue."));
        } finally {
            looked = System.nanoTime();
        }
    }

    /** Kept open as long as the desk is. */
    private synchronized ArchiveShelf shelf() {
        ArchiveShelf open = shelf;
        if (open == null) {
            open = ArchiveShelf.open(folder, home);
            shelf = open;
        }
        return open;
    }
}
