package org.misecue.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.misecue.compare.CompareJson;
import org.misecue.compare.ComparePage;
import org.misecue.compare.CompareText;
import org.misecue.compare.Journey;
import org.misecue.compare.JourneyJson;
import org.misecue.compare.JourneyText;
import org.misecue.worktop.DecidingMoments;
import org.misecue.worktop.Worktop;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Written against spoken. */
@Command(
        name = "compare",
        description =
                "Hold every written quantity against what is said. Exits 1 when something differs that nobody has decided on.")
final class CompareCommand extends EpisodeCommand {

    @Mixin
    private final ResultOptions to = new ResultOptions();

    @Option(
            names = "--html",
            description = "As a page too, out/compare.html, with stills and clips where there is footage.")
    private boolean html;

    @Nullable
    @Option(
            names = "--explain",
            paramLabel = "WORDS",
            description = {
                "Show how the verdicts on these came about, word for word: an ingredient, with its component if you like,"
                        + " or a setting such as oven, bake, yield."
            })
    private String explain;

    CompareCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        worktop.comparison(); // tells what is missing
        if (html) {
            DecidingMoments moments = DecidingMoments.make(worktop, worktop.films());
            made(
                    worktop.episode().out(),
                    "compare.html",
                    ComparePage.html(worktop.findings(), moments.stills(), moments.clips(), worktop.decisions()));
        }
        String text = explain == null ? report(worktop) : journeys(worktop, explain);
        tell(worktop.recipe().notes());
        tell(worktop.narrationNotes());
        hand(text, to);
        return worktop.docket().differing().isEmpty() ? ExitCode.OK : ExitCode.DIFFERS;
    }

    private String report(Worktop worktop) {
        return to.json
                ? CompareJson.of(worktop.comparison(), worktop.claims(), worktop.heardOtherwise())
                : CompareText.of(worktop.findings(), worktop.decisions());
    }

    private String journeys(Worktop worktop, String words) {
        List<Journey> journeys = worktop.journeys(words);
        List<String> heard = worktop.heardOtherwise();
        return to.json ? JourneyJson.of(journeys, heard) : JourneyText.of(journeys, heard);
    }
}
