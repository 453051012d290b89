package org.misecue.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.misecue.episode.Archive;
import org.misecue.worktop.ArchiveShelf;
import org.misecue.worktop.Shelving;

/** An archive as a command works with it: told is how far the indexing has come. */
final class Shelves {

    /** A word now and then is enough. */
    private static final int EPISODES_PER_WORD = 100;

    private Shelves() {}

    static ArchiveShelf open(MisecueCommand command, Path archive) {
        Path folder = command.stage.resolve(archive);
        Archive named = Archive.open(folder);
        if (!Files.isDirectory(named.state().folder())) {
            named.someEpisodes(); // nothing is written into a folder that was named by mistake
        }
        return ArchiveShelf.open(folder, command.stage.home());
    }

    static Shelving freshen(MisecueCommand command, ArchiveShelf shelf) {
        return shelf.freshen((done, changed, episode) -> {
            if (done % EPISODES_PER_WORD == 0) {
                command.progress("Indexing episode " + (done + 1) + " of " + changed);
            }
        });
    }
}
