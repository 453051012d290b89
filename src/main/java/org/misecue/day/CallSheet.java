package org.misecue.day;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.misecue.notice.Note;
import org.misecue.prep.PrepPlan;

/** Writes a schedule down as rows with clock times, people and equipment, and adds breaks, ovens and small jobs. */
final class CallSheet {

    private final String title;
    private final Timed timed;
    private final DaySettings settings;
    private final PrepPlan prep;
    private final Set<Integer> critical;
    private final Map<Integer, List<String>> people;
    private final OvenRows ovens;

    /** @param critical the places of the tasks that the end of the day hangs on */
    CallSheet(String title, Timed timed, DaySettings settings, PrepPlan prep, Set<Integer> critical) {
        this.title = title;
        this.timed = timed;
        this.settings = settings;
        this.prep = prep;
        this.critical = critical;
        this.people = new Crew(timed).people();
        this.ovens = new OvenRows(timed, settings.ovens());
    }

    DayPlan plan(Optional<LocalDateTime> naiveEnd, List<DayPlan.StandIn> standIns, List<Note> notes) {
        List<Entry> entries = entries();
        Figures figures = new Figures(timed, settings.presenters());
        LocalDateTime begin = entries.stream()
                .map(Entry::start)
                .min(Comparator.naturalOrder())
                .orElse(settings.firstShot());
        return new DayPlan(
                title,
                settings.dated(),
                entries,
                begin,
                settings.firstShot(),
                timed.time(timed.schedule().end()),
                timed.schedule().proved(),
                naiveEnd,
                figures.changes(),
                Duration.ofMinutes(figures.idle()),
                standIns,
                Optional.empty(),
                List.of(),
                List.copyOf(notes));
    }

    private List<Entry> entries() {
        List<Entry> entries = new ArrayList<>();
        for (int at = 0; at < timed.size(); at++) {
            if (timed.work(at).minutes() > 0) {
                entries.add(entry(at));
            }
        }
        entries.addAll(new RestRows(timed).rows(timed.day().firstRest()));
        entries.addAll(ovens.rows(timed.day().firstHeat()));
        entries.addAll(new JobRows(timed).rows(prep.jobs(), timed.day().firstJob()));
        entries.sort(Comparator.comparing(Entry::start).thenComparing(Entry::id));
        return List.copyOf(entries);
    }

    private Entry entry(int at) {
        Task task = timed.task(at);
        List<String> with = new ArrayList<>(task.with());
        int oven = timed.schedule().ovens().get(at);
        if (oven >= 0) {
            with.remove(DayBuilder.OVEN);
            with.add(0, ovens.name(oven));
        }
        return new Entry(
                task.id(),
                task.kind(),
                task.what(),
                task.step(),
                timed.time(timed.start(at)),
                timed.time(timed.end(at)),
                people.getOrDefault(at, List.of()),
                List.copyOf(with),
                task.shots(),
                task.setUp(),
                critical.contains(at),
                false);
    }
}
