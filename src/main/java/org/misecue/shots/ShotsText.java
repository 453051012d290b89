package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.Wording;

/** The list as plain text, for a terminal or a message. */
public final class ShotsText {

    private ShotsText() {}

    public static String of(ShotPlan plan, ShotOrder order) {
        ShotSheet sheet = ShotSheet.of(plan, order);
        List<String> out = new ArrayList<>();
        out.add(sheet.title() + ": shot list");
        out.add(sheet.summary());
        for (ShotSheet.Group group : sheet.groups()) {
            out.add("");
            out.add(group.text().isEmpty() ? group.heading() : group.heading() + ": " + group.text());
            group.rows().forEach(row -> write(row, out));
        }
        out.add("");
        out.add("Set-ups");
        ShotWords.setups(plan).forEach(setup -> out.add("  " + setup));
        out.add("");
        out.add(PrepPlan.LAW);
        return String.join("\n", out) + "\n";
    }

    private static void write(ShotSheet.Row row, List<String> out) {
        Shot shot = row.shot();
        out.add("");
        out.add("[ ] %d  %s – %s – %s"
                .formatted(shot.number(), shot.setup(), ShotWords.technique(shot), ShotWords.takes(shot)));
        line(out, "see", shot.see());
        line(out, "camera", shot.camera());
        line(out, "bowls", ShotWords.bowls(shot));
        line(out, "say", shot.say());
        line(out, "hands", shot.hands());
        line(out, "sound", shot.sound());
        line(out, "title", shot.lowerThird());
        line(out, "also", Wording.steps(shot.laterSteps()));
        row.hazards().forEach(hazard -> line(out, "care", hazard.toString()));
        line(out, "care", row.known());
    }

    private static void line(List<String> out, String name, String text) {
        if (!text.isEmpty()) {
            out.add("      %-7s %s".formatted(name, text));
        }
    }
}
