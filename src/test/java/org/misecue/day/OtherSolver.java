package org.misecue.day;

import java.util.List;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.Task;

/** The plain part of a project in Choco, a general-purpose constraint solver of other authors, as a second opinion. */
final class OtherSolver {

    /** No schedule exists. */
    static final int IMPOSSIBLE = -1;

    private OtherSolver() {}

    /** The shortest makespan of works, lags and means. */
    static int shortest(Project project) {
        Model model = new Model();
        int horizon = project.horizon();
        IntVar end = model.intVar("end", 0, horizon);
        List<Task> tasks = project.works().stream()
                .map(work -> {
                    IntVar start = model.intVar(0, horizon);
                    IntVar stop = model.intVar(0, horizon);
                    model.arithm(stop, "<=", end).post();
                    return new Task(start, model.intVar(work.minutes()), stop);
                })
                .toList();
        for (Lag lag : project.lags()) {
            IntVar before = tasks.get(lag.before()).getEnd();
            IntVar after = tasks.get(lag.after()).getStart();
            model.arithm(after, "-", before, ">=", lag.least()).post();
            lag.most().ifPresent(most -> model.arithm(after, "-", before, "<=", most)
                    .post());
        }
        project.means().forEach((means, number) -> {
            int[] users = IntStream.range(0, tasks.size())
                    .filter(at -> project.works().get(at).minutes() > 0)
                    .filter(at -> project.works().get(at).takes().getOrDefault(means, 0) > 0)
                    .toArray();
            if (users.length == 0) {
                return;
            }
            model.cumulative(
                            IntStream.of(users).mapToObj(tasks::get).toArray(Task[]::new),
                            IntStream.of(users)
                                    .mapToObj(at -> model.intVar(
                                            project.works().get(at).takes().getOrDefault(means, 0)))
                                    .toArray(IntVar[]::new),
                            model.intVar(number))
                    .post();
        });
        Solution best = model.getSolver().findOptimalSolution(end, Model.MINIMIZE);
        return best == null ? IMPOSSIBLE : best.getIntVal(end);
    }
}
