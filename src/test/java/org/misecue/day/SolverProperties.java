package org.misecue.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Checked against a checker that counts minutes, and against another solver with a model of its own. */
class SolverProperties {

    @Provide
    Arbitrary<Project> plain() {
        return Projects.plain();
    }

    @Provide
    Arbitrary<Project> days() {
        return Projects.days();
    }

    private static Solver.Outcome best(Project project) {
        return new Solver(project, Solver.Effort.USUAL, end -> {}).best();
    }

    @Property(tries = 60, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
    void a_found_day_keeps_everything_that_is_asked(@ForAll("days") Project project) {
        if (best(project) instanceof Solver.Found found) {
            assertThat(ProjectChecker.faults(project, found.schedule())).isEmpty();
        } else {
            assertThat(best(project)).isInstanceOf(Solver.Conflict.class);
        }
    }

    @Property(tries = 40, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
    void of_wishes_that_conflict_each_can_be_given_up_to_go_on(@ForAll("days") Project project) {
        if (best(project) instanceof Solver.Conflict conflict) {
            for (String wish : conflict.wishes()) {
                List<String> others = conflict.wishes().stream()
                        .filter(other -> !other.equals(wish))
                        .toList();
                Project only = onlyWith(project, others);
                assertThat(best(only)).as("without %s", wish).isInstanceOf(Solver.Found.class);
            }
            assertThat(best(onlyWith(project, conflict.wishes()))).isInstanceOf(Solver.Conflict.class);
        }
    }

    private static Project onlyWith(Project project, List<String> wishes) {
        Project only = project;
        for (Limit limit : project.limits()) {
            only = wishes.contains(limit.wish()) ? only : only.without(limit.wish());
        }
        for (Lag lag : project.lags()) {
            only = lag.wish()
                    .filter(wish -> !wishes.contains(wish))
                    .map(only::without)
                    .orElse(only);
        }
        return only;
    }

    @Property(tries = 40, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
    void the_shortest_is_as_short_as_another_solver_finds(@ForAll("plain") Project project) {
        Solver.Outcome outcome = new Solver(project, Solver.Effort.USUAL, end -> {}).shortest();
        int other = OtherSolver.shortest(project);
        if (outcome instanceof Solver.Found found) {
            assertThat(found.schedule().proved()).isTrue();
            assertThat(found.schedule().end()).isEqualTo(other);
            assertThat(ProjectChecker.faults(project, found.schedule())).isEmpty();
        } else {
            assertThat(other).isEqualTo(OtherSolver.IMPOSSIBLE);
        }
    }

    @Property(tries = 15, edgeCases = net.jqwik.api.EdgeCasesMode.NONE)
    void the_same_project_gives_the_same_day_again(@ForAll("days") Project project) {
        assertThat(best(project)).isEqualTo(best(project));
    }
}
