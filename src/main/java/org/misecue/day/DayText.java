package org.misecue.day;

import org.misecue.prep.PrepPlan;

/** The call sheet for the screen. */
public final class DayText {

    private DayText() {}

    public static String of(DayPlan plan) {
        StringBuilder out = new StringBuilder();
        line(out, plan.title());
        line(out, DayWords.heading(plan));
        DayWords.summary(plan).forEach(sentence -> line(out, sentence));
        line(out, "");
        for (Entry entry : plan.entries()) {
            line(
                    out,
                    "%s–%s %s %3d  %s%s"
                            .formatted(
                                    entry.start().toLocalTime(),
                                    entry.end().toLocalTime(),
                                    entry.done() ? "✓" : entry.critical() ? "!" : " ",
                                    entry.id(),
                                    entry.what(),
                                    entry.step() == 0 ? "" : " (step " + entry.step() + ")"));
            String beside = beside(entry, plan);
            if (!beside.isEmpty()) {
                line(out, "                    " + beside);
            }
        }
        line(out, "");
        line(out, "! The day ends later if this begins later.");
        if (plan.entries().stream().anyMatch(Entry::done)) {
            line(out, "✓ Done.");
        }
        if (!plan.slips().isEmpty()) {
            line(out, "");
            line(out, "What slips");
            plan.slips().forEach(slip -> line(out, "  " + DayWords.slip(slip, plan)));
        }
        if (!plan.standIns().isEmpty()) {
            line(out, "");
            plan.standIns().forEach(standIn -> line(out, DayWords.standIn(standIn)));
        }
        line(out, "");
        line(out, PrepPlan.LAW);
        return out.toString();
    }

    private static String beside(Entry entry, DayPlan plan) {
        StringBuilder words = new StringBuilder();
        if (plan.isOtherDay(entry.start())) {
            words.append("begins ").append(DayWords.time(entry.start(), plan));
        }
        for (String each : new String[] {DayWords.shots(entry), entry.setUp(), DayWords.busy(entry)}) {
            if (!each.isEmpty()) {
                words.append(words.isEmpty() ? "" : " · ").append(each);
            }
        }
        return words.toString();
    }

    private static void line(StringBuilder out, String text) {
        out.append(text.stripTrailing()).append('\n');
    }
}
