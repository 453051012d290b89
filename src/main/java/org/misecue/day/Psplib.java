package org.misecue.day;

import java.util.Locale;

/** The project scheduling problem library's problems, whose best makespans are published, solved by the day's own model. */
public final class Psplib {

    /** Seconds to try; a plan of a day has far less. */
    private static final Solver.Effort PATIENT = new Solver.Effort(8, 600, false);

    private Psplib() {}

    /**
     * What came of it.
     *
     * @param makespan the shortest found; −1 where none was
     * @param proved whether no shorter exists
     * @param seconds of the clock
     */
    public record Result(int makespan, boolean proved, double seconds) {

        /** As {@code day --psplib} prints it. */
        public String json() {
            return String.format(
                    Locale.ROOT, "{\"makespan\": %d, \"proved\": %b, \"seconds\": %.3f}%n", makespan, proved, seconds);
        }
    }

    /**
     * @param file the name to put into messages
     * @throws org.misecue.notice.BadInput with the line where the text is no single-mode problem
     */
    public static Result solve(String file, String text) {
        Project project = PsplibReader.read(file, text);
        long begin = System.nanoTime();
        Solver.Outcome outcome = new Solver(project, PATIENT, end -> {}).shortest();
        double seconds = (System.nanoTime() - begin) / 1e9;
        return outcome instanceof Solver.Found found
                ? new Result(found.schedule().end(), found.schedule().proved(), seconds)
                : new Result(-1, false, seconds);
    }
}
