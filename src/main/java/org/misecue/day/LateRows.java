package org.misecue.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Marks on a new call sheet what is finished, puts small jobs that are overdue at once, and tells what slips. */
final class LateRows {

    /** Smaller slips are not worth a word. */
    private static final int WORTH_TELLING = 5;

    private final Day day;
    private final LateDay late;
    private final Standing standing;
    private final Set<Integer> overSteps = new HashSet<>();
    private final boolean begun;

    LateRows(Day day, LateDay late, Standing standing) {
        this.day = day;
        this.late = late;
        this.standing = standing;
        day.tasks().forEach(task -> overSteps.add(task.step()));
        tasks().filter(at -> !late.isOver(at))
                .forEach(at -> overSteps.remove(day.tasks().get(at).step()));
        overSteps.remove(0);
        this.begun = tasks().anyMatch(late::isOver);
    }

    DayPlan mark(DayPlan plan) {
        List<Entry> entries = plan.entries().stream()
                .map(this::mark)
                .sorted(Comparator.comparing(Entry::start).thenComparing(Entry::id))
                .toList();
        return plan.late(entries, standing.promisedEnd(), slips(entries));
    }

    private IntStream tasks() {
        return IntStream.range(0, day.tasks().size());
    }

    private Entry mark(Entry entry) {
        boolean done = isDone(entry);
        LocalDateTime start = entry.start();
        if (entry.kind() == Entry.Kind.JOB && !done && start.isBefore(standing.now())) {
            start = standing.now();
        } else if (entry.kind() == Entry.Kind.JOB && done) {
            start = standing.planned().getOrDefault(entry.id(), start);
        }
        return entry.with(start, done);
    }

    private boolean isDone(Entry entry) {
        boolean past = !entry.end().isAfter(standing.now());
        return standing.done().contains(entry.id())
                || switch (entry.kind()) {
                    case JOB -> overSteps.contains(entry.step()) || (entry.step() == 0 && begun);
                    case HEAT, AWAY -> past;
                    case PAUSE -> false;
                    default -> late.isOver(entry.id() - 1);
                };
    }

    private List<DayPlan.Slip> slips(List<Entry> entries) {
        List<DayPlan.Slip> slips = new ArrayList<>();
        for (Entry entry : entries) {
            LocalDateTime was = standing.promised().get(entry.id());
            boolean told = entry.kind() != Entry.Kind.JOB && entry.kind() != Entry.Kind.HEAT && !entry.done();
            if (was != null
                    && told
                    && !entry.start().isBefore(standing.now())
                    && Duration.between(was, entry.start()).toMinutes() >= WORTH_TELLING) {
                slips.add(new DayPlan.Slip(entry.id(), entry.what(), was, entry.start()));
            }
        }
        return slips;
    }
}
