package org.misecue.cli;

import org.misecue.episode.OutFolder;
import org.misecue.page.Pdf;
import org.misecue.prep.LabelPage;
import org.misecue.prep.LabelSheet;
import org.misecue.prep.PrepJson;
import org.misecue.prep.PrepPage;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.PrepText;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The mise en place. */
@Command(name = "prep", description = "Plan the bowls, the jobs to start ahead, the kit and the shopping.")
final class PrepCommand extends EpisodeCommand {

    @Mixin
    private final ResultOptions to = new ResultOptions();

    @Option(names = "--html", description = "As a page, out/prep.html.")
    private boolean html;

    @Option(names = "--pdf", description = "To print: out/prep.pdf and out/labels.pdf.")
    private boolean pdf;

    @Option(names = "--paper", paramLabel = "PAPER", description = "For the labels: A4 (usual) or Letter.")
    private String paper = "A4";

    @Option(
            names = "--grid",
            paramLabel = "COLUMNSxROWS",
            description = "Labels across and down a sheet, such as 3x8; usual is 3x7.")
    private String grid = "3x7";

    PrepCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        LabelSheet labels = LabelSheet.of(paper, grid);
        Worktop worktop = open();
        tell(worktop.recipe().notes());
        PrepPlan plan = worktop.prep();
        tell(worktop.scaled().warnings());
        if (html || pdf) {
            pages(worktop, plan, labels);
        }
        if (to.json) {
            hand(PrepJson.of(plan), to);
        } else if (!html && !pdf || to.out != null) {
            hand(PrepText.of(plan), to);
        }
        return ExitCode.OK;
    }

    private void pages(Worktop worktop, PrepPlan plan, LabelSheet labels) {
        OutFolder out = worktop.episode().out();
        String page = PrepPage.html(plan);
        if (html) {
            made(out, "prep.html", page);
        }
        if (pdf) {
            made(out, "prep.pdf", Pdf.of(page));
            made(out, "labels.pdf", Pdf.of(LabelPage.html(plan, labels)));
        }
    }
}
