package org.misecue.day;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.prep.Wording;

/** What the call sheet says in words, on paper and on the screen. */
public final class DayWords {

    private DayWords() {}

    /** "10:05", or with the date where it is another day. */
    public static String time(LocalDateTime time, DayPlan plan) {
        String clock = time.toLocalTime().toString();
        return time.toLocalDate().equals(plan.firstShot().toLocalDate()) ? clock : clock + " on " + time.toLocalDate();
    }

    /** "shots 3 and 4", or nothing. */
    public static String shots(Entry entry) {
        if (entry.shots().isEmpty()) {
            return "";
        }
        return (entry.shots().size() == 1 ? "shot " : "shots ")
                + Wording.list(entry.shots().stream().map(String::valueOf).toList());
    }

    /** "presenter, camera, oven 1". */
    public static String busy(Entry entry) {
        return Stream.concat(entry.who().stream(), entry.with().stream()).collect(Collectors.joining(", "));
    }

    /** What the day as a whole comes to, a sentence each. */
    public static List<String> summary(DayPlan plan) {
        List<String> lines = new ArrayList<>();
        lines.add("First hand at %s, first shot at %s, done at %s."
                .formatted(time(plan.begin(), plan), time(plan.firstShot(), plan), time(plan.end(), plan)));
        if (plan.naiveEnd().isPresent()) {
            LocalDateTime naive = plan.naiveEnd().get();
            lines.add(
                    plan.saved().isZero()
                            ? "The order of the recipe would take as long: done at " + time(naive, plan) + "."
                            : "In the order of the recipe it would be %s: this order saves %s."
                                    .formatted(time(naive, plan), Wording.duration(plan.saved())));
        }
        lines.add("Camera and lights move %s; the presenter waits %s in all."
                .formatted(Wording.count(plan.changes(), "time"), Wording.duration(plan.idle())));
        lines.add(
                plan.proved()
                        ? "No shorter day exists with these times, people and equipment."
                        : "A shorter day may exist; none was found in the time given.");
        return lines;
    }

    /** "With one made earlier up to step 8 the day would end 55 min sooner." */
    public static String standIn(DayPlan.StandIn standIn) {
        return "With one made earlier, ready after step %d, the day would end %s sooner: made-earlier: [%d] in episode.yaml."
                .formatted(standIn.step(), Wording.duration(standIn.saves()), standIn.step());
    }

    /** "14 cake: bakes, 10:20 instead of 10:05". */
    public static String slip(DayPlan.Slip slip, DayPlan plan) {
        return "%d %s: %s instead of %s"
                .formatted(slip.id(), slip.what(), time(slip.is(), plan), time(slip.was(), plan));
    }
}
