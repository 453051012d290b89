package org.misecue.cli;

import org.misecue.compare.CompareJson;
import org.misecue.compare.ComparePage;
import org.misecue.compare.CompareText;
import org.misecue.compare.Comparison;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Written against spoken. */
@Command(
        name = "compare",
        description = "Hold every written quantity against what is said. Exits 1 when something differs.")
final class CompareCommand extends EpisodeCommand {

    @Mixin
    private final ResultOptions to = new ResultOptions();

    @Option(
            names = "--html",
            description = "As a page too, out/compare.html, with stills and clips where there is footage.")
    private boolean html;

    CompareCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        Comparison comparison = worktop.comparison();
        if (html) {
            DecidingMoments moments = DecidingMoments.make(worktop, worktop.films());
            made(
                    worktop.episode().out(),
                    "compare.html",
                    ComparePage.html(comparison, moments.stills(), moments.clips()));
        }
        hand(to.json ? CompareJson.of(comparison) : CompareText.of(comparison), to);
        return comparison.differs() ? ExitCode.DIFFERS : ExitCode.OK;
    }
}
