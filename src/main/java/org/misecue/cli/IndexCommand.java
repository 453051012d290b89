package org.misecue.cli;

import org.misecue.worktop.Index;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;

/** Makes the index that {@code find} looks into. */
@Command(
        name = "index",
        description = "Make the index that “find” looks into. “find” does it by itself when a file has changed.")
final class IndexCommand extends EpisodeCommand {

    IndexCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        int passages = new Index(worktop).build();
        if (!common.quiet) {
            stage.out().println(passages + " passages can be found now: misecue find WORDS -e EPISODE");
        }
        return ExitCode.OK;
    }
}
