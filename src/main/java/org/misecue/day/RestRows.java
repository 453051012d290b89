package org.misecue.day;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The rows in which people have no work: breaks and absences. */
final class RestRows {

    private final Timed timed;

    RestRows(Timed timed) {
        this.timed = timed;
    }

    /** @param firstId the number of the first row; the others count on */
    List<Entry> rows(int firstId) {
        List<Entry> entries = new ArrayList<>();
        int id = firstId;
        int pauses = 0;
        for (Limit limit : timed.day().project().limits()) {
            if (limit instanceof Limit.Pause pause) {
                int start = timed.schedule().pauses().get(pauses++);
                if (start >= 0) {
                    entries.add(row(id, Entry.Kind.PAUSE, "Break", start, start + pause.minutes(), everybody()));
                }
                id++;
            } else if (limit instanceof Limit.Away away) {
                entries.add(row(id++, Entry.Kind.AWAY, away.wish(), away.from(), away.to(), List.of(away.means())));
            }
        }
        return entries;
    }

    private List<String> everybody() {
        return Stream.of(Project.PRESENTER, Project.CAMERA)
                .flatMap(means -> Crew.names(means, timed.day().project()).stream())
                .toList();
    }

    private Entry row(int id, Entry.Kind kind, String what, int from, int to, List<String> who) {
        return new Entry(
                id, kind, what, 0, timed.time(from), timed.time(to), who, List.of(), List.of(), "", false, false);
    }
}
