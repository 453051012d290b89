package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import org.misecue.prep.PrepPlan;

/** The list as plain text, for a terminal or a message. */
public final class ShotsText {

    private ShotsText() {}

    public static String of(ShotPlan plan) {
        List<String> out = new ArrayList<>();
        out.add(plan.title() + ": shot list");
        out.add(plan.shots().size() + " shots");
        for (Shot shot : plan.shots()) {
            out.add("");
            out.add("[ ] %d  %s – %s, %s – %s"
                    .formatted(
                            shot.number(),
                            ShotWords.step(shot),
                            shot.setup(),
                            shot.technique(),
                            ShotWords.takes(shot)));
            line(out, "camera", shot.camera());
            line(out, "see", shot.see());
            line(out, "hands", shot.hands());
            line(out, "bowls", ShotWords.bowls(shot));
            line(out, "say", shot.say());
            line(out, "sound", shot.sound());
            line(out, "title", shot.lowerThird());
            shot.hazards().forEach(hazard -> line(out, "care", hazard));
        }
        out.add("");
        out.add("Set-ups");
        ShotWords.setups(plan).forEach(setup -> out.add("  " + setup));
        out.add("");
        out.add(PrepPlan.LAW);
        return String.join("\n", out) + "\n";
    }

    private static void line(List<String> out, String name, String text) {
        if (!text.isEmpty()) {
            out.add("      %-7s %s".formatted(name, text));
        }
    }
}
