package org.misecue.prep;

import java.util.List;
import java.util.Map;
import org.misecue.page.Pages;

/** A label for each bowl of each take, on a plain grid, to cut out along the lines or to print on sticky sheets. */
public final class LabelPage {

    private LabelPage() {}

    public static String html(PrepPlan plan) {
        return html(plan, LabelSheet.USUAL);
    }

    public static String html(PrepPlan plan, LabelSheet sheet) {
        List<PrintedLabel> labels = plan.filled().stream()
                .map(bowl -> PrintedLabel.of(plan, set(plan, bowl), bowl, sheet))
                .toList();
        return Pages.fill(
                "prep/labels.jte",
                Map.of("title", plan.title(), "sheet", sheet, "pages", PrepWords.rows(labels, sheet.perPage())));
    }

    /** "take 2"; empty where there is one set only. */
    static String set(PrepPlan plan, Bowl bowl) {
        return plan.sets().all() > 1 || bowl.take() == 0 ? plan.setName(bowl.take()) : "";
    }
}
