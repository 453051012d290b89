package org.misecue.cli;

import java.nio.file.Path;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Parameters;

/** A command whose one argument is an episode. */
abstract class EpisodeCommand extends MisecueCommand {

    @Parameters(
            arity = "0..1",
            paramLabel = "EPISODE",
            defaultValue = ".",
            description = "The episode's folder; this folder where none is named.")
    private Path folder = Path.of(".");

    EpisodeCommand(Stage stage) {
        super(stage);
    }

    Worktop open() {
        return open(folder);
    }
}
