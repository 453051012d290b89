package org.misecue.prep;

import java.util.Map;
import org.misecue.page.Pages;

/** A label for each bowl of each take, three in a row, to cut out along the lines. */
public final class LabelPage {

    private LabelPage() {}

    public static String html(PrepPlan plan) {
        return Pages.fill("prep/labels.jte", Map.of("plan", plan));
    }
}
