package org.misecue.desk.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.misecue.day.DayPlan;
import org.misecue.day.DayWords;
import org.misecue.day.Entry;
import org.misecue.desk.timers.TimerBoard;
import org.misecue.prep.Wording;

/**
 * A planned day as it is shown at a time.
 *
 * @param plan as it was kept
 * @param done the keys of the rows that are ticked
 * @param clock on the wall
 * @param timers that run
 * @param last the key of what this device ticked last; empty for nothing
 * @param path the address of the page
 */
public record DayBoard(
        DayPlan plan, Set<String> done, LocalDateTime clock, TimerBoard timers, String last, String path) {

    /** As many rows are shown large at once. */
    public static final int MOST = 3;

    /** Smaller delays are not worth a word. */
    private static final int WORTH_TELLING = 5;

    /** How long after its end a day may still go on. */
    private static final int OVERTIME_HOURS = 12;

    /** The time, if the clock is within the day; empty on another day, and where no day is named. */
    public Optional<LocalDateTime> now() {
        boolean within = plan.dated()
                && !clock.isBefore(plan.begin().toLocalDate().atStartOfDay())
                && clock.isBefore(plan.end().plusHours(OVERTIME_HOURS));
        return within ? Optional.of(clock) : Optional.empty();
    }

    public boolean isDone(Entry entry) {
        return done.contains(FilmDay.key(entry));
    }

    public String key(Entry entry) {
        return FilmDay.key(entry);
    }

    /** "10:05–10:20". */
    public String when(Entry entry) {
        return DayWords.time(entry.start(), plan) + "–" + entry.end().toLocalTime();
    }

    /** What hands do now. */
    public List<Entry> current() {
        return rows(entry -> !runsByItself(entry) && hasBegun(entry) && !isPast(entry));
    }

    /** What was to be done by now and has no tick. */
    public List<Entry> overdue() {
        return rows(entry -> !runsByItself(entry) && isPast(entry));
    }

    /** What bakes, cools or heats meanwhile, or was to be over by now. */
    public List<Entry> meanwhile() {
        return rows(entry -> runsByItself(entry) && hasBegun(entry) && !isOver(entry));
    }

    /** What hands do next. */
    public List<Entry> next() {
        return rows(entry -> !runsByItself(entry) && !hasBegun(entry));
    }

    /** Everything that was to be over by now and has no tick, for one touch. */
    public List<Entry> allPast() {
        return rows(this::isPast);
    }

    public boolean runsByItself(Entry entry) {
        return entry.kind() == Entry.Kind.WAIT || entry.kind() == Entry.Kind.HEAT;
    }

    public boolean isCurrent(Entry entry) {
        return !isDone(entry) && now().isPresent() && hasBegun(entry) && !isPast(entry);
    }

    public boolean isOverdue(Entry entry) {
        return !isDone(entry) && !isOver(entry) && now().isPresent() && isPast(entry);
    }

    /** "12 min left", "was to end 5 min ago"; empty where it is not now. */
    public String left(Entry entry) {
        if (now().isEmpty()) {
            return "";
        }
        Duration left = Duration.between(clock.truncatedTo(ChronoUnit.MINUTES), entry.end());
        if (left.isZero()) {
            return "ends now";
        }
        return left.isNegative()
                ? "was to end " + Wording.duration(left.negated()) + " ago"
                : Wording.duration(left) + " left";
    }

    /** How late the day is by what has no tick; empty where that is not worth a word. */
    public Optional<String> late() {
        return overdue().stream()
                .filter(entry -> !entry.who().isEmpty())
                .findFirst()
                .map(entry -> Duration.between(entry.end(), clock))
                .filter(late -> late.toMinutes() >= WORTH_TELLING)
                .map(late -> "By what is ticked the day is %s late.".formatted(Wording.duration(late)));
    }

    /** What this device ticked last, if it still stands. */
    public Optional<Entry> lastDone() {
        return plan.entries().stream()
                .filter(entry -> isDone(entry) && key(entry).equals(last))
                .findFirst();
    }

    /** A wait is over when something after it in the same step is done. */
    private boolean isOver(Entry entry) {
        return runsByItself(entry)
                && plan.entries().stream()
                        .anyMatch(other -> isDone(other)
                                && other.step() == entry.step()
                                && other.kind() != Entry.Kind.JOB
                                && !other.start().isBefore(entry.end()));
    }

    private List<Entry> rows(Predicate<Entry> which) {
        return now().isEmpty()
                ? List.of()
                : plan.entries().stream()
                        .filter(entry -> !isDone(entry))
                        .filter(which)
                        .toList();
    }

    private boolean hasBegun(Entry entry) {
        return !entry.start().isAfter(clock);
    }

    private boolean isPast(Entry entry) {
        return !entry.end().isAfter(clock);
    }
}
