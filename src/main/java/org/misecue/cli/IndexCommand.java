package org.misecue.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
import org.misecue.worktop.ArchiveShelf;
import org.misecue.worktop.Index;
import org.misecue.worktop.Shelving;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the index that {@code find} looks into. */
@Command(
        name = "index",
        description = "Make the index that “find” looks into. “find” does it by itself when a file has changed.")
final class IndexCommand extends MisecueCommand {

    @Nullable
    @Parameters(
            arity = "0..1",
            paramLabel = "EPISODE",
            description = "The episode's folder; this folder where none is named.")
    private Path folder;

    @Nullable
    @Option(
            names = "--in",
            paramLabel = "ARCHIVE",
            description = "Instead of one episode: a folder of episodes, of which those that have changed are indexed.")
    private Path archive;

    IndexCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        if (archive == null) {
            indexEpisode(folder == null ? Path.of(".") : folder);
        } else if (folder != null) {
            throw new BadInput(Place.of("--in"), "an archive and one episode are named; leave one of them out.");
        } else {
            indexArchive(archive);
        }
        return ExitCode.OK;
    }

    private void indexEpisode(Path episode) {
        Worktop worktop = open(episode);
        tell(worktop.narrationNotes());
        int passages = new Index(worktop).build();
        say(passages + " passages can be found now: misecue find WORDS -e EPISODE");
    }

    private void indexArchive(Path in) {
        try (ArchiveShelf shelf = Shelves.open(this, in)) {
            Shelving shelving = Shelves.freshen(this, shelf);
            tellLines(shelving.notes());
            int all = shelving.episodes().size();
            say("%d %s can be searched now, %d indexed anew: misecue find WORDS --in ARCHIVE"
                    .formatted(
                            all,
                            all == 1 ? "episode" : "episodes",
                            shelving.changed().size()));
        }
    }

    private void say(String sentence) {
        if (!common.quiet) {
            stage.out().println(sentence);
        }
    }
}
