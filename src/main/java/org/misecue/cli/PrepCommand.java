package org.misecue.cli;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.misecue.episode.OutFolder;
import org.misecue.episode.Ticks;
import org.misecue.page.Pdf;
import org.misecue.prep.ChecklistPage;
import org.misecue.prep.LabelPage;
import org.misecue.prep.LabelSheet;
import org.misecue.prep.PrepJson;
import org.misecue.prep.PrepPage;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.PrepText;
import org.misecue.prep.TickList;
import org.misecue.worktop.Worktop;
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

    @Option(names = "--pdf", description = "To print: out/prep.pdf, out/checklist.pdf and out/labels.pdf.")
    private boolean pdf;

    @Option(names = "--paper", paramLabel = "PAPER", description = "For labels and checklist: A4 (usual) or Letter.")
    private String paper = "A4";

    @Option(
            names = "--grid",
            paramLabel = "COLUMNSxROWS",
            description = "Labels across and down a sheet, such as 3x8; usual is 3x7.")
    private String grid = "3x7";

    @Nullable
    @Option(
            names = "--tick",
            paramLabel = "WHAT",
            description = "Tick off bowls by number and jobs by letter: 3,5-7,B. Kept in .misecue/ticks.yaml.")
    private String tick;

    @Nullable
    @Option(names = "--untick", paramLabel = "WHAT", description = "Take ticks off again.")
    private String untick;

    PrepCommand(Stage stage) {
        super(stage);
    }

    @Override
    public Integer call() {
        LabelSheet labels = LabelSheet.of(paper, grid);
        Worktop worktop = open();
        tell(worktop.recipe().notes());
        PrepPlan plan = ticked(worktop);
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

    /** The plan with the ticks that this run puts and takes. */
    private PrepPlan ticked(Worktop worktop) {
        PrepPlan plan = worktop.prep();
        List<String> put = tick == null ? List.of() : TickList.keys(plan, "--tick", tick);
        List<String> taken = untick == null ? List.of() : TickList.keys(plan, "--untick", untick);
        if (put.isEmpty() && taken.isEmpty()) {
            return plan;
        }
        Ticks ticks = new Ticks(worktop.episode());
        ticks.change(put, taken, TickList.standing(plan));
        return plan.withTicks(ticks.read());
    }

    private void pages(Worktop worktop, PrepPlan plan, LabelSheet labels) {
        OutFolder out = worktop.episode().out();
        String page = PrepPage.html(plan);
        if (html) {
            made(out, "prep.html", page);
        }
        if (pdf) {
            made(out, "prep.pdf", Pdf.of(page));
            made(out, "checklist.pdf", Pdf.of(ChecklistPage.html(plan, labels.paper())));
            made(out, "labels.pdf", Pdf.of(LabelPage.html(plan, labels)));
        }
    }
}
