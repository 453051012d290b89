package org.misecue.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.misecue.compare.Findings;
import org.misecue.episode.Decision;
import org.misecue.episode.Decisions;
import org.misecue.narration.Clock;

/** The docket for a terminal. */
public final class DocketText {

    private DocketText() {}

    public static String of(Docket docket) {
        List<String> out = new ArrayList<>();
        out.add(docket.title());
        out.add(summary(docket));
        Findings.Kind kind = null;
        for (Matter matter : docket.matters()) {
            if (!Objects.equals(kind, matter.kind())) {
                kind = matter.kind();
                out.add("");
                out.add(kind.heading());
            }
            matter(out, matter);
        }
        if (!docket.done().isEmpty()) {
            out.add("");
            out.add("Decided before, and no longer a matter");
            docket.done().forEach(one -> out.add("  " + one.about() + ": " + words(one)));
        }
        return String.join("\n", out) + "\n";
    }

    /** "2 of 6 undecided, 1 to be done". */
    public static String summary(Docket docket) {
        int all = docket.matters().size();
        if (all == 0) {
            return "Nothing is to be decided.";
        }
        int open = docket.undecided().size();
        int toDo = docket.toDo().size();
        String decided = open == 0 ? "All " + all + " decided" : open + " of " + all + " undecided";
        return decided + (toDo == 0 ? "" : ", " + toDo + " to be done") + ".";
    }

    private static void matter(List<String> out, Matter matter) {
        out.add("  " + matter.about());
        String where = matter.finding().where().isEmpty()
                ? ""
                : " (" + matter.finding().where() + ")";
        out.add("      " + matter.finding().what() + where + " – "
                + matter.finding().reason());
        matter.finding()
                .evidence()
                .forEach(one -> out.add("      " + Clock.hms(one.moment().at()) + "  “" + one.quote() + "”"));
        out.add("      " + standing(matter));
    }

    /** What was decided, or that nothing was: "film a pick-up (Nell, 2026-05-04 10:00) – to be done". */
    public static String standing(Matter matter) {
        String state = matter.state().words();
        return matter.decision()
                .map(one -> switch (matter.state()) {
                    case STALE -> state + "; it was: " + words(one);
                    case TO_DO -> words(one) + " – to be done";
                    default -> words(one);
                })
                .orElse(state);
    }

    /** "film a pick-up (Nell, 2026-05-04 10:00: said from memory)". */
    public static String words(Decision one) {
        String who = one.who().isEmpty() ? "" : one.who() + ", ";
        String note = one.note().isEmpty() ? "" : ": " + one.note();
        return one.choice().words() + " (" + who + Decisions.minute(one.when()) + note + ")";
    }
}
