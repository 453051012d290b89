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
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** What is left of a day: what is done stays where it was, what bakes goes on, all else begins from now on. */
final class LateDay {

    /** A break that is overdue begins within so many minutes; common practice, no source. */
    private static final int OVERDUE = 30;

    private final Day day;
    private final Standing standing;
    private final LocalDateTime zero;
    private final int now;
    private final Map<Integer, Integer> begun = new HashMap<>();
    private final Set<Integer> over = new HashSet<>();
    private final List<String> told = new ArrayList<>();
    private final Project project;

    LateDay(Day day, Standing standing, LocalDateTime firstShot) {
        this.day = day;
        this.standing = standing;
        this.zero = firstShot;
        this.now = Math.max(0, minute(standing.now()));
        done();
        running();
        this.project = rest();
    }

    /** What is still to be planned: what is done keeps nobody busy. */
    Project project() {
        return project;
    }

    /** The day as it was planned from what is left, with those who did what is done. */
    Day shown(Project planned) {
        List<Work> works = new ArrayList<>();
        for (int at = 0; at < day.tasks().size(); at++) {
            Work work = day.project().works().get(at);
            works.add(new Work(project.works().get(at).minutes(), work.takes(), work.heat(), work.setUp()));
        }
        return new Day(planned.with(works, planned.lags(), planned.limits()), day.tasks());
    }

    /** A schedule with the ovens that were used for what is done. */
    Schedule shown(Schedule found) {
        List<Integer> ovens = new ArrayList<>(found.ovens());
        over.forEach(at -> ovens.set(at, oven(at).orElse(-1)));
        return new Schedule(found.starts(), ovens, found.pauses(), found.end(), found.proved());
    }

    /** What could not be kept because it is too late, and what was taken as done. */
    List<Note> notes(String file) {
        return told.stream().map(words -> new Note(Place.of(file), words)).toList();
    }

    /** Whether a task is finished. */
    boolean isOver(int at) {
        return over.contains(at);
    }

    private int minute(LocalDateTime time) {
        return (int) Duration.between(zero, time).toMinutes();
    }

    /** What is done, and what it needed, began when it was to, but has ended by now. */
    private void done() {
        for (int at = 0; at < day.tasks().size(); at++) {
            if (standing.done().contains(day.tasks().get(at).id())) {
                over.add(at);
            }
        }
        Set<Integer> silent = new TreeSet<>();
        Set<Integer> open = new HashSet<>(over);
        while (!open.isEmpty()) {
            Set<Integer> needed = day.project().lags().stream()
                    .filter(lag -> open.contains(lag.after()))
                    .map(Lag::before)
                    .filter(over::add)
                    .collect(Collectors.toSet());
            silent.addAll(needed);
            open.clear();
            open.addAll(needed);
        }
        over.forEach(at -> begun.put(at, begin(at)));
        String rows = silent.stream()
                .filter(at -> day.project().works().get(at).minutes() > 0)
                .map(at -> String.valueOf(day.tasks().get(at).id()))
                .collect(Collectors.joining(", "));
        if (!rows.isEmpty()) {
            told.add("what is done needs these rows, so they were taken as done too: " + rows + ".");
        }
    }

    private int begin(int at) {
        int minutes = day.project().works().get(at).minutes();
        int planned = planned(day.tasks().get(at).id()).orElse(now);
        return planned + minutes <= now ? Math.max(0, planned) : Math.max(0, Math.min(planned, now - minutes));
    }

    private OptionalInt planned(int id) {
        LocalDateTime time = standing.planned().get(id);
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
            int place = at;
            if (start == null) {
                works.add(work);
                limits.add(new Limit.NotBefore(at, earliest(at, work)));
            } else {
                works.add(
                        over.contains(at)
                                ? new Work(ended(at) - start, Map.of(), Optional.empty(), Optional.empty())
                                : work);
                limits.add(new Limit.Begun(at, start));
                if (!over.contains(at)) {
                    oven(at).ifPresent(oven -> limits.add(new Limit.InOven(place, oven)));
                }
            }
        }
        limits.addAll(limits());
        return day.project()
                .with(works, day.project().lags().stream().flatMap(this::still).toList(), limits);
    }

    /** An oven that was not to be hot by now takes its time, but no longer than planned. */
    private int earliest(int at, Work work) {
        int heating = work.heat().map(Work.Heat::heating).orElse(0);
        int ready = planned(day.tasks().get(at).id()).orElse(now + heating);
        return heating == 0 ? now : Math.max(now, Math.min(now + heating, ready));
    }

    private OptionalInt oven(int at) {
        Integer oven = standing.ovens().get(day.tasks().get(at).id());
        boolean bakes = day.project().works().get(at).heat().isPresent();
        return oven == null || !bakes ? OptionalInt.empty() : OptionalInt.of(oven);
    }

    /** Wishes about what has not begun; a break keeps its place if it was held, and is due now if it was missed. */
    private List<Limit> limits() {
        List<Limit> limits = new ArrayList<>();
        int rest = day.firstRest();
        for (Limit limit : day.project().limits()) {
            if (limit instanceof Limit.Pause pause) {
                limits.add(still(pause, rest++));
            } else if (limit instanceof Limit.Away) {
                limits.add(limit);
                rest++;
            } else {
                still(limit).ifPresent(limits::add);
            }
        }
        return limits;
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
                        told.add("it is too late by %d min for this: %s; look at it now.".formatted(missed, wish)));
        return Stream.of(new Lag(lag.before(), lag.after(), lag.least(), OptionalInt.empty(), Optional.empty()));
    }

    private Optional<Limit> still(Limit limit) {
        if (limit instanceof Limit.SameOven same && over.contains(same.dial())) {
            OptionalInt oven = oven(same.dial());
            return over.contains(same.bake()) || oven.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Limit.InOven(same.bake(), oven.getAsInt()));
        }
        if (limit instanceof Limit.GoesOn goesOn && over.contains(goesOn.first())) {
            OptionalInt oven = oven(goesOn.first());
            return over.contains(goesOn.second()) || oven.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Limit.InOven(goesOn.second(), oven.getAsInt()));
        }
        if (limit instanceof Limit.Window window) {
            Set<Integer> ahead = window.works().stream()
                    .filter(work -> !begun.containsKey(work))
                    .collect(Collectors.toSet());
            return Optional.of(new Limit.Window(ahead, window.from(), window.to(), window.wish()));
        }
        if (limit instanceof Limit.At at && !begun.containsKey(at.work()) && at.minute() < now) {
            told.add("it is too late for this: " + at.wish() + ".");
            return Optional.empty();
        }
        return limit instanceof Limit.At at && begun.containsKey(at.work()) ? Optional.empty() : Optional.of(limit);
    }

    private Limit.Pause still(Limit.Pause pause, int id) {
        if (standing.done().contains(id)) {
            int held = Math.max(0, Math.min(now, planned(id).orElse(now)));
            return new Limit.Pause(held, held, Math.max(0, Math.min(pause.minutes(), now - held)), pause.wish());
        }
        int earliest = Math.max(now, pause.earliest());
        int latest = pause.latest() >= now ? pause.latest() : now + OVERDUE;
        return new Limit.Pause(earliest, latest, pause.minutes(), pause.wish());
    }
}
