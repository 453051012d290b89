package org.misecue.cli;

import org.misecue.shots.ShotPlan;
import org.misecue.shots.ShotsCsv;
import org.misecue.shots.ShotsJson;
import org.misecue.shots.ShotsPage;
import org.misecue.shots.ShotsText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The shot list. */
@Command(name = "shots", description = "Plan the shots: camera, what must be seen, bowls, sound.")
final class ShotsCommand extends EpisodeCommand {

    @Mixin
    private final ResultOptions to = new ResultOptions();

    @Option(names = "--html", description = "As a page, out/shots.html.")
    private boolean html;

    @Option(names = "--csv", description = "As a table, with commas.")
    private boolean csv;

    ShotsCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        Worktop worktop = open();
        tell(worktop.recipe().notes());
        ShotPlan shots = worktop.shots();
        if (html) {
            made(worktop.episode().out(), "shots.html", ShotsPage.html(shots));
        }
        if (to.json) {
            hand(ShotsJson.of(shots), to);
        } else if (csv) {
            hand(ShotsCsv.of(shots), to);
        } else if (!html || to.out != null) {
            hand(ShotsText.of(shots), to);
        }
        return ExitCode.OK;
    }
}
