package org.misecue.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.misecue.footage.FilmInfo;
import picocli.CommandLine.Command;

/** Everything for one episode. */
@Command(
        name = "make",
        description = {
            "Make everything for one episode, and say what each person needs to know now.",
            "Exits 0 also when something differs: it reports; “compare” judges."
        })
final class MakeCommand extends EpisodeCommand {

    MakeCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        boolean spoken = !worktop.episode().narration().isEmpty();
        // All is worked out before the first file is written, so that bad input leaves older results as they were.
        Map<Path, FilmInfo> films = worktop.films();
        Results results = new Results(worktop);
        results.addPrep();
        results.addShots();
        if (spoken) {
            results.addComparison();
        }
        results.addDescription();
        List<String> callSheet = CallSheet.of(worktop, films);
        results.write();
        if (spoken) {
            progress("Taking stills and clips of what is to decide");
            results.writeComparePage(films);
            progress("Making the index");
            new Index(worktop).build();
        }
        tell(worktop.recipe().notes());
        worktop.narrations().forEach(narration -> tell(narration.notes()));
        tell(worktop.scaled().warnings());
        if (!common.quiet) {
            stage.out().println(worktop.title());
            stage.out().println();
            results.table().forEach(line -> stage.out().println("  " + line));
            stage.out().println();
        }
        callSheet.forEach(stage.out()::println);
        return ExitCode.OK;
    }
}
