package org.misecue.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.prep.Wording;

/** What the call sheet says in words, on paper and on the screen. */
public final class DayWords {

    private DayWords() {}

    /** "10:05", or with its day where it is another. */
    public static String time(LocalDateTime time, DayPlan plan) {
        String clock = time.toLocalTime().toString();
        if (!plan.isOtherDay(time)) {
            return clock;
        }
        return switch (daysOff(time, plan)) {
            case -1 -> clock + " the day before";
            case 1 -> clock + " the next day";
            default ->
                daysOff(time, plan) < 0
                        ? clock + " " + -daysOff(time, plan) + " days before"
                        : clock + " " + daysOff(time, plan) + " days later";
        };
    }

    /** Days after the one of the first shot; below 0 before it. */
    static int daysOff(LocalDateTime time, DayPlan plan) {
        return (int) ChronoUnit.DAYS.between(plan.firstShot().toLocalDate(), time.toLocalDate());
    }

    /** "Call sheet for Monday 4 May 2026". */
    public static String heading(DayPlan plan) {
        return plan.day().map(day -> "Call sheet for " + day).orElse("Call sheet");
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
        late(plan).ifPresent(lines::add);
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

    /** What a plan of a day that has begun means for its end; empty for a plan made before. */
    public static Optional<String> late(DayPlan plan) {
        return plan.promised().map(promised -> late(plan, promised));
    }

    private static String late(DayPlan plan, LocalDateTime promised) {
        Duration later = Duration.between(promised, plan.end());
        String end = later.isZero()
                ? "The day still ends as first planned"
                : later.isNegative()
                        ? "The day ends %s sooner than first planned".formatted(Wording.duration(later.negated()))
                        : "The day ends %s later than first planned, at %s instead of %s"
                                .formatted(Wording.duration(later), time(plan.end(), plan), time(promised, plan));
        Duration most = plan.slips().stream()
                .map(slip -> Duration.between(slip.was(), slip.is()))
                .max(Comparator.naturalOrder())
                .orElse(Duration.ZERO);
        return switch (plan.slips().size()) {
            case 0 -> end + ".";
            case 1 -> "%s; 1 row begins %s later than it was to.".formatted(end, Wording.duration(most));
            default ->
                "%s; %d rows begin later than they were to, by up to %s."
                        .formatted(end, plan.slips().size(), Wording.duration(most));
        };
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
