package org.misecue.cli;

import java.nio.file.Path;
import org.misecue.worktop.ArchiveShelf;
import org.misecue.worktop.Shelving;

/** An archive as a command works with it: told is how far the indexing has come. */
final class Shelves {

    /** A word now and then is enough. */
    private static final int EPISODES_PER_WORD = 100;

    private Shelves() {}

    static ArchiveShelf open(MisecueCommand command, Path archive) {
        return ArchiveShelf.open(command.stage.resolve(archive), command.stage.home());
    }

    static Shelving freshen(MisecueCommand command, ArchiveShelf shelf) {
        return shelf.freshen((done, changed, episode) -> {
            if (done % EPISODES_PER_WORD == 0) {
                command.progress("Indexing episode " + (done + 1) + " of " + changed);
            }
        });
    }
}
