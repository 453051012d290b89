package org.misecue.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Stream;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** What is left of a day: what is done stays where it was, what bakes goes on, all else begins from now on. */
final class LateDay {

    /** Smaller slips are not worth a word. */
    private static final int WORTH_TELLING = 5;

    private final DayBuilder.Day day;
    private final Standing standing;
    private final LocalDateTime zero;
    private final int now;
    private final Map<Integer, Integer> begun = new HashMap<>();
    private final Set<Integer> over = new HashSet<>();
    private final List<String> late = new ArrayList<>();
    private final Project project;

    LateDay(DayBuilder.Day day, Standing standing, LocalDateTime firstShot) {
        this.day = day;
        this.standing = standing;
        this.zero = firstShot;
        this.now = Math.max(0, minute(standing.now()));
        done();
        running();
        this.project = rest();
    }

    Project project() {
        return project;
    }

    /** What could not be kept because it is too late. */
    List<Note> notes(String file) {
        return late.stream().map(words -> new Note(Place.of(file), words)).toList();
    }

    /** The rows that begin later than planned. */
    List<DayPlan.Slip> slips(Schedule schedule) {
        List<DayPlan.Slip> slips = new ArrayList<>();
        for (int at = 0; at < day.tasks().size(); at++) {
            Task task = day.tasks().get(at);
            LocalDateTime was = standing.promised().get(task.id());
            LocalDateTime is = zero.plusMinutes(schedule.starts().get(at));
            boolean listed =
                    !begun.containsKey(at) && day.project().works().get(at).minutes() > 0;
            if (was != null && listed && Duration.between(was, is).toMinutes() >= WORTH_TELLING) {
                slips.add(new DayPlan.Slip(task.id(), task.what(), was, is));
            }
        }
        return slips;
    }

    private int minute(LocalDateTime time) {
        return (int) Duration.between(zero, time).toMinutes();
    }

    /** What is done began when it was to, but has ended by now. */
    private void done() {
        for (int at = 0; at < day.tasks().size(); at++) {
            Task task = day.tasks().get(at);
            if (standing.done().contains(task.id())) {
                int planned = planned(task).orElse(now);
                begun.put(at, Math.max(0, Math.min(planned, now)));
                over.add(at);
            }
        }
    }

    private OptionalInt planned(Task task) {
        LocalDateTime time = standing.planned().get(task.id());
        return time == null ? OptionalInt.empty() : OptionalInt.of(minute(time));
    }

    /** What follows at once on something done runs by itself since then. */
    private void running() {
        for (int at = 0; at < day.tasks().size(); at++) {
            if (day.tasks().get(at).kind() == Entry.Kind.WAIT && !over.contains(at)) {
                int waiting = at;
                day.project().lags().stream()
                        .filter(lag -> lag.after() == waiting && lag.most().equals(OptionalInt.of(0)))
                        .filter(lag -> over.contains(lag.before()))
                        .findFirst()
                        .ifPresent(lag -> begun.put(waiting, ended(lag.before())));
            }
        }
    }

    private int ended(int at) {
        return Math.min(
                now, begun.getOrDefault(at, now) + day.project().works().get(at).minutes());
    }

    private Project rest() {
        List<Work> works = new ArrayList<>();
        List<Limit> limits = new ArrayList<>();
        for (int at = 0; at < day.tasks().size(); at++) {
            Work work = day.project().works().get(at);
            Integer start = begun.get(at);
            if (start == null) {
                works.add(work);
                limits.add(new Limit.NotBefore(at, now));
            } else {
                boolean ended = over.contains(at);
                works.add(ended ? new Work(ended(at) - start, Map.of(), Optional.empty(), Optional.empty()) : work);
                limits.add(new Limit.Begun(at, start));
            }
        }
        day.project().limits().stream().filter(this::isAhead).forEach(limits::add);
        return day.project()
                .with(works, day.project().lags().stream().flatMap(this::still).toList(), limits);
    }

    /** What lies behind asks nothing any more; a bound that is missed is said once. */
    private Stream<Lag> still(Lag lag) {
        Integer start = begun.get(lag.before());
        if (begun.containsKey(lag.after())) {
            return Stream.empty();
        }
        if (start == null || lag.most().isEmpty()) {
            return Stream.of(lag);
        }
        int end = over.contains(lag.before())
                ? ended(lag.before())
                : start + day.project().works().get(lag.before()).minutes();
        int missed = now - end - lag.most().getAsInt();
        if (missed <= 0) {
            return Stream.of(lag);
        }
        lag.wish()
                .ifPresent(wish ->
                        late.add("it is too late by %d min for this: %s; look at it now.".formatted(missed, wish)));
        return Stream.of(new Lag(lag.before(), lag.after(), lag.least(), OptionalInt.empty(), Optional.empty()));
    }

    /** Whether a wish still lies ahead, and is about something that has not begun. */
    private boolean isAhead(Limit limit) {
        if (limit instanceof Limit.At at) {
            return !begun.containsKey(at.work()) && at.minute() >= now;
        }
        if (limit instanceof Limit.Away away) {
            return away.to() > now;
        }
        return !(limit instanceof Limit.Pause pause) || pause.latest() >= now;
    }
}
