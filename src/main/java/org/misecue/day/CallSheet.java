package org.misecue.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.misecue.notice.Note;
import org.misecue.prep.Job;
import org.misecue.prep.PrepPlan;

/** Writes a schedule down as rows with clock times, people and equipment, and adds the small jobs and the heating ovens. */
final class CallSheet {

    private static final int JOB_MINUTES = 2;

    private final String title;
    private final DayBuilder.Day day;
    private final Schedule schedule;
    private final DaySettings settings;
    private final PrepPlan prep;
    private final Set<Integer> critical;
    private final Map<Integer, List<String>> people;
    private int nextId;

    CallSheet(String title, DayBuilder.Day day, Schedule schedule, DaySettings settings, PrepPlan prep) {
        this.title = title;
        this.day = day;
        this.schedule = schedule;
        this.settings = settings;
        this.prep = prep;
        this.critical = CriticalPath.of(day.project(), schedule);
        this.people = new Crew(day.project(), schedule).people();
        this.nextId = day.tasks().size() + 1;
    }

    DayPlan plan(
            Optional<LocalDateTime> naiveEnd,
            List<DayPlan.StandIn> standIns,
            List<DayPlan.Slip> slips,
            List<Note> notes) {
        List<Entry> entries = new ArrayList<>();
        for (int at = 0; at < day.tasks().size(); at++) {
            if (day.project().works().get(at).minutes() > 0) {
                entries.add(entry(at));
            }
        }
        entries.addAll(jobs());
        entries.addAll(pauses());
        entries.addAll(heating());
        entries.sort(Comparator.comparing(Entry::start).thenComparing(Entry::id));
        LocalDateTime begin = entries.stream()
                .map(Entry::start)
                .min(Comparator.naturalOrder())
                .orElse(settings.firstShot());
        return new DayPlan(
                title,
                List.copyOf(entries),
                begin,
                settings.firstShot(),
                time(schedule.end()),
                schedule.proved(),
                naiveEnd,
                changes(),
                Duration.ofMinutes(idle()),
                standIns,
                slips,
                List.copyOf(notes));
    }

    private LocalDateTime time(int minute) {
        return settings.firstShot().plusMinutes(minute);
    }

    private int end(int at) {
        return schedule.starts().get(at) + day.project().works().get(at).minutes();
    }

    private Entry entry(int at) {
        Task task = day.tasks().get(at);
        List<String> with = new ArrayList<>(task.with());
        with.remove(DayBuilder.OVEN);
        if (schedule.ovens().get(at) >= 0) {
            with.add(0, oven(schedule.ovens().get(at)));
        }
        return new Entry(
                task.id(),
                task.kind(),
                task.what(),
                task.step(),
                time(schedule.starts().get(at)),
                time(end(at)),
                people.getOrDefault(at, List.of()),
                List.copyOf(with),
                task.shots(),
                task.setUp(),
                critical.contains(at));
    }

    private String oven(int number) {
        return settings.ovens() == 1 ? "oven" : "oven " + (number + 1);
    }

    /** Each oven heats before a bake, unless it has that heat from the one before. */
    private List<Entry> heating() {
        List<Entry> entries = new ArrayList<>();
        List<Integer> bakes = IntStream.range(0, day.tasks().size())
                .filter(at -> schedule.ovens().get(at) >= 0)
                .boxed()
                .sorted(Comparator.comparing((Integer at) -> schedule.starts().get(at))
                        .thenComparing(at -> at))
                .toList();
        for (int at : bakes) {
            Work.Heat heat = day.project().works().get(at).heat().orElseThrow();
            int from = schedule.starts().get(at) - heat.heating();
            boolean hot = bakes.stream()
                    .anyMatch(other -> other != at
                            && schedule.ovens()
                                    .get(other)
                                    .equals(schedule.ovens().get(at))
                            && schedule.starts().get(other) <= schedule.starts().get(at)
                            && (schedule.starts().get(other) < schedule.starts().get(at) || other < at)
                            && end(other) >= from
                            && day.project().works().get(other).heat().equals(Optional.of(heat)));
            if (!hot) {
                String oven = oven(schedule.ovens().get(at));
                String degrees = heat.celsius() == 0 ? "its heat" : heat.celsius() + " °C";
                entries.add(new Entry(
                        nextId++,
                        Entry.Kind.HEAT,
                        "Switch the " + oven + " to " + degrees + "; ready at "
                                + time(schedule.starts().get(at)).toLocalTime(),
                        day.tasks().get(at).step(),
                        time(from),
                        time(schedule.starts().get(at)),
                        List.of(),
                        List.of(oven),
                        List.of(),
                        "",
                        false));
            }
        }
        return entries;
    }

    private List<Entry> pauses() {
        List<Entry> entries = new ArrayList<>();
        int at = 0;
        for (Limit limit : day.project().limits()) {
            if (limit instanceof Limit.Pause pause) {
                int start = schedule.pauses().get(at++);
                if (start >= 0) {
                    entries.add(rest(Entry.Kind.PAUSE, "Break", start, start + pause.minutes(), List.of("everybody")));
                }
            } else if (limit instanceof Limit.Away away) {
                entries.add(rest(Entry.Kind.AWAY, away.wish(), away.from(), away.to(), List.of(away.means())));
            }
        }
        return entries;
    }

    private Entry rest(Entry.Kind kind, String what, int from, int to, List<String> who) {
        return new Entry(nextId++, kind, what, 0, time(from), time(to), who, List.of(), List.of(), "", false);
    }

    /** Worked back from the step that needs them; if the presenter is on camera just then, done before that. */
    private List<Entry> jobs() {
        List<Entry> entries = new ArrayList<>();
        Map<Integer, Integer> begins = new HashMap<>();
        for (int at = 0; at < day.tasks().size(); at++) {
            begins.merge(day.tasks().get(at).step(), schedule.starts().get(at), Math::min);
        }
        for (Job job : prep.jobs()) {
            if (!job.what().startsWith("Heat the oven")) {
                boolean weighing = job.what().startsWith("Weigh");
                int needed = job.step() == 0 ? 0 : begins.getOrDefault(job.step(), 0);
                int start = free(needed - (int) job.before().toMinutes());
                int minutes = weighing ? (int) job.before().toMinutes() : JOB_MINUTES;
                entries.add(new Entry(
                        nextId++,
                        Entry.Kind.JOB,
                        job.what(),
                        job.step(),
                        time(start),
                        time(start + minutes),
                        List.of(),
                        List.of(),
                        List.of(),
                        "",
                        false));
            }
        }
        return entries;
    }

    private int free(int wished) {
        return IntStream.range(0, day.tasks().size())
                .filter(at -> day.project().needsHands(at))
                .filter(at -> schedule.starts().get(at) < wished && end(at) > wished)
                .map(at -> schedule.starts().get(at))
                .min()
                .orElse(wished);
    }

    private int changes() {
        List<Integer> filmed = IntStream.range(0, day.tasks().size())
                .filter(at -> day.project().works().get(at).setUp().isPresent())
                .boxed()
                .sorted(Comparator.comparing((Integer at) -> schedule.starts().get(at))
                        .thenComparing(at -> at))
                .toList();
        return (int) IntStream.range(1, filmed.size())
                .filter(at -> !day.project()
                        .works()
                        .get(filmed.get(at))
                        .setUp()
                        .equals(day.project().works().get(filmed.get(at - 1)).setUp()))
                .count();
    }

    private int idle() {
        List<Integer> hands = IntStream.range(0, day.tasks().size())
                .filter(at -> day.project().works().get(at).takes().containsKey(Project.PRESENTER))
                .boxed()
                .toList();
        int last = hands.stream().mapToInt(this::end).max().orElse(0);
        int busy = hands.stream()
                .mapToInt(at -> day.project().works().get(at).minutes())
                .sum();
        return Math.max(0, last * settings.presenters() - busy);
    }
}
