package org.misecue.shots;

import java.util.Map;
import org.misecue.page.Pages;

/** The shot list to print: one row a shot, with a box to tick. */
public final class ShotsPage {

    private ShotsPage() {}

    public static String html(ShotPlan plan) {
        return Pages.fill("shots/list.jte", Map.of("plan", plan));
    }
}
