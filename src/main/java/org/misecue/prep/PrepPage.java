package org.misecue.prep;

import java.util.Map;
import org.misecue.page.Pages;

/** The sheet that the presenter pins to the wall. */
public final class PrepPage {

    private PrepPage() {}

    public static String html(PrepPlan plan) {
        return Pages.fill("prep/sheet.jte", Map.of("plan", plan));
    }
}
