package org.misecue.cli;

import java.nio.file.Path;
import java.util.Map;
import org.misecue.footage.FilmInfo;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;
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

    /**
     * The films with what they hold.
     *
     * @param to what is to be done with them, in a word
     * @throws BadInput if there is none
     */
    static Map<Path, FilmInfo> films(Worktop worktop, String to) {
        Map<Path, FilmInfo> films = worktop.films();
        if (films.isEmpty()) {
            throw new BadInput(
                    Place.of("footage"),
                    "there is no film to " + to + "; put the camera's files there, named like their narration.");
        }
        return films;
    }
}
