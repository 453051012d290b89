package org.misecue.shots;

import java.util.Map;
import org.misecue.page.Pages;

/** The shot list to print: one row a shot, with a box to tick for each take. */
public final class ShotsPage {

    private ShotsPage() {}

    public static String html(ShotPlan plan, ShotOrder order) {
        return Pages.fill("shots/list.jte", Map.of("plan", plan, "sheet", ShotSheet.of(plan, order)));
    }
}
