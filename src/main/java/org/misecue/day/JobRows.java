package org.misecue.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.misecue.prep.Job;

/** The small jobs off camera, worked back from the step that needs them; if hands are busy just then, before that. */
final class JobRows {

    /** To take butter out or switch something on; common practice, no source. */
    private static final int MINUTES = 2;

    private final Timed timed;
    private final Map<Integer, Integer> begins = new HashMap<>();

    JobRows(Timed timed) {
        this.timed = timed;
        for (int at = 0; at < timed.size(); at++) {
            begins.merge(timed.task(at).step(), timed.start(at), Math::min);
        }
    }

    /** @param firstId the number of the first job's row; the others count on */
    List<Entry> rows(List<Job> jobs, int firstId) {
        List<Entry> entries = new ArrayList<>();
        for (int at = 0; at < jobs.size(); at++) {
            if (!isOvens(jobs.get(at))) {
                entries.add(row(jobs.get(at), firstId + at));
            }
        }
        return entries;
    }

    private Entry row(Job job, int id) {
        int before = (int) job.before().toMinutes();
        int needed = job.step() == 0 ? 0 : begins.getOrDefault(job.step(), 0);
        int start = free(needed - before);
        int minutes = job.what().startsWith("Weigh") ? before : MINUTES;
        return new Entry(
                id,
                Entry.Kind.JOB,
                job.what(),
                job.step(),
                timed.time(start),
                timed.time(start + minutes),
                List.of(),
                List.of(),
                List.of(),
                "",
                false,
                false);
    }

    /** The ovens have rows of their own. */
    private static boolean isOvens(Job job) {
        return job.what().startsWith("Heat the oven");
    }

    private int free(int wished) {
        return IntStream.range(0, timed.size())
                .filter(at -> timed.day().project().needsHands(at))
                .filter(at -> timed.start(at) < wished && timed.end(at) > wished)
                .map(timed::start)
                .min()
                .orElse(wished);
    }
}
