package org.misecue.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.misecue.notice.BadInput;
import org.misecue.notice.Place;

/** Reads a single-mode problem of the project scheduling problem library into the model that also plans a filming day. */
final class PsplibReader {

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final int MOST_JOBS = 2000;

    private final String file;
    private final List<String> lines;

    /** The figures of a line. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Row(int line, int[] figures) {}

    private PsplibReader(String file, String text) {
        this.file = file;
        this.lines = text.lines().toList();
    }

    /** @throws BadInput with the line where the text is no such problem */
    static Project read(String file, String text) {
        return new PsplibReader(file, text).project();
    }

    private Project project() {
        List<Row> precedence = rows("PRECEDENCE RELATIONS:", 1, 3);
        List<Row> requests = rows("REQUESTS/DURATIONS:", 2, 3);
        int[] available = rows("RESOURCEAVAILABILITIES:", 1, 1).get(0).figures();
        int number = precedence.size();
        if (requests.size() != number) {
            throw wrong(requests.get(0).line(), "as many rows of durations as of jobs, " + number);
        }
        Map<String, Integer> means = new HashMap<>();
        for (int at = 0; at < available.length; at++) {
            means.put("R " + (at + 1), available[at]);
        }
        List<Work> works = requests.stream().map(row -> work(row, available)).toList();
        List<Lag> lags = new ArrayList<>();
        for (int job = 0; job < number; job++) {
            Row row = precedence.get(job);
            for (int at = 3; at < row.figures().length; at++) {
                int successor = row.figures()[at];
                if (successor < 1 || successor > number) {
                    throw wrong(row.line(), "successors from 1 to " + number);
                }
                lags.add(Lag.then(job, successor - 1));
            }
        }
        Project project = Project.plain(works, lags, means);
        try {
            Precedence.of(project);
        } catch (IllegalArgumentException circle) {
            throw new BadInput(
                    Place.of(file), "jobs wait for each other in a circle; mend the precedence relations.", circle);
        }
        return project;
    }

    private Work work(Row request, int[] available) {
        int[] row = request.figures();
        Map<String, Integer> takes = new HashMap<>();
        for (int at = 3; at < row.length && at - 3 < available.length; at++) {
            if (row[at] > available[at - 3]) {
                throw wrong(request.line(), "no more of R " + (at - 2) + " than there is");
            }
            if (row[at] > 0) {
                takes.put("R " + (at - 2), row[at]);
            }
        }
        return new Work(row[2], takes, Optional.empty(), Optional.empty());
    }

    /** The rows of figures under a heading, after so many lines that begin with letters or strokes. */
    private List<Row> rows(String heading, int skipped, int least) {
        int at = lines.indexOf(heading);
        if (at < 0) {
            throw wrong(1, "a line \"" + heading + "\"");
        }
        List<Row> rows = new ArrayList<>();
        for (int line = at + 1 + skipped; line < lines.size(); line++) {
            String text = lines.get(line).strip();
            if (text.startsWith("*")) {
                break;
            }
            rows.add(new Row(line + 1, figures(text, line + 1, least)));
        }
        if (rows.isEmpty() || rows.size() > MOST_JOBS) {
            throw wrong(at + 1, "1 to " + MOST_JOBS + " rows of figures under \"" + heading + "\"");
        }
        return rows;
    }

    private int[] figures(String text, int line, int least) {
        try {
            int[] figures = Arrays.stream(BLANKS.split(text))
                    .mapToInt(Integer::parseInt)
                    .toArray();
            if (figures.length >= least
                    && Arrays.stream(figures).allMatch(figure -> figure >= 0 && figure < 1_000_000)) {
                return figures;
            }
        } catch (NumberFormatException noFigure) {
            // told below, with rows that are too short
        }
        throw wrong(line, "at least " + least + " whole numbers from 0");
    }

    private BadInput wrong(int line, String expected) {
        return new BadInput(
                Place.of(file, line),
                "expected " + expected + "; use a single-mode .sm file of the library, unchanged.");
    }
}
