package org.misecue.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.day.DayPlan;
import org.misecue.footage.FilmInfo;
import org.misecue.notice.BadInput;
import org.misecue.worktop.FilmingDays;
import org.misecue.worktop.Index;
import org.misecue.worktop.Worktop;
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

    /** Wishes for the day that cannot all be met keep nobody from the rest. */
    private Optional<DayPlan> day(Worktop worktop) {
        try {
            return Optional.of(new FilmingDays(worktop, this::progress).plan());
        } catch (BadInput impossible) {
            if (!common.quiet) {
                stage.err().println("note: the filming day was not planned. " + impossible.getMessage());
            }
            return Optional.empty();
        }
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        boolean spoken = !worktop.narrations().isEmpty();
        // All is worked out before the first file is written, so that bad input leaves older results as they were.
        Map<Path, FilmInfo> films = worktop.films();
        Results results = new Results(worktop);
        results.addPrep();
        results.addShots();
        Optional<DayPlan> day = day(worktop);
        day.ifPresent(results::addDay);
        if (worktop.filmed()) {
            results.addComparison();
            results.addLists();
        }
        results.addDescription();
        List<String> callSheet = CallSheet.of(worktop, films, day);
        results.write();
        if (worktop.filmed()) {
            progress("Taking stills and clips of what is to decide");
            results.writeComparePage(films);
        }
        if (spoken) {
            progress("Making the index");
            new Index(worktop).build();
        }
        tell(worktop.recipe().notes());
        tell(worktop.narrationNotes());
        tell(worktop.scaled().warnings());
        tell(day.map(DayPlan::notes).orElse(List.of()));
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
