package org.misecue.day;

import java.time.LocalDateTime;
import java.util.Map;
import java.util.Optional;
import org.misecue.page.Pages;

/** The call sheet to print: the drawn day, then its rows with boxes to tick. */
public final class DayPage {

    private DayPage() {}

    /** @param now where the day has come to; empty for a plan made before */
    public static String html(DayPlan plan, Optional<LocalDateTime> now) {
        return Pages.fill("day/sheet.jte", Map.of("plan", plan, "timeline", Timeline.svg(plan, now)));
    }
}
