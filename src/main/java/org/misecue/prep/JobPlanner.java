package org.misecue.prep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;

/** The jobs with lead times: what the ingredients ask for, what the method waits for, oven and tins, and the weighing. */
final class JobPlanner {

    private static final String COMMON = "common practice, no source";
    private static final Duration TIN_LINED = Duration.ofMinutes(15);

    private final Recipe recipe;
    private final Pantry pantry;
    private final FilmingClock clock;
    private final OvenJobs ovens;

    JobPlanner(Recipe recipe, Pantry pantry, PrepSettings settings, FilmingClock clock) {
        this.recipe = recipe;
        this.pantry = pantry;
        this.clock = clock;
        this.ovens = new OvenJobs(recipe, settings.ovens(), clock);
    }

    /**
     * @param bowls those of all takes, and of what is made earlier
     * @param earlier jobs of what is made earlier
     */
    List<Job> plan(List<Bowl> bowls, List<ToHand> toHand, List<Job> earlier) {
        List<Job> jobs = new ArrayList<>(earlier);
        jobs.addAll(new IngredientJobs(pantry, clock).of(bowls, toHand));
        jobs.addAll(ovens.of());
        jobs.addAll(tinJobs());
        jobs.sort(Comparator.comparing((Job job) -> clock.startBefore(job.step(), job.before()))
                .thenComparing(Job::step));
        return jobs;
    }

    /** What the method leaves open about the oven; known after {@link #plan}. */
    List<Note> notes() {
        return ovens.notes();
    }

    /** Every tin that is stated; where none is, whatever a step lines or greases. */
    private List<Job> tinJobs() {
        List<Job> stated = statedTins();
        return stated.isEmpty()
                ? recipe.steps().stream()
                        .filter(step -> step.techniques().contains("line-tin")
                                || step.techniques().contains("grease"))
                        .limit(1)
                        .map(step -> tinJob(
                                "Line or grease the tin or tray as step " + step.number() + " says", step.number()))
                        .toList()
                : stated;
    }

    private List<Job> statedTins() {
        return recipe.allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.PAN)
                .map(setting -> tinJob(
                        "Have ready, greased and lined as the method says: " + SettingWords.tin(setting, 1),
                        setting.step()))
                .distinct()
                .toList();
    }

    private Job tinJob(String what, int from) {
        int needed = stepNeeding("bake", from);
        return job(
                what,
                TIN_LINED,
                needed == 0 ? "baking" : "step " + needed,
                needed,
                "A raised mixture does not wait for its tin.",
                COMMON);
    }

    /** The first step from the given one on that has the technique; the given one where none has. */
    private int stepNeeding(String technique, int from) {
        return recipe.steps().stream()
                .filter(step -> step.number() >= from && step.techniques().contains(technique))
                .map(Step::number)
                .findFirst()
                .orElse(from);
    }

    private Job job(String what, Duration before, String forWhat, int step, String why, String source) {
        return new Job(
                what, before, forWhat, step, clock.clockTime(step, before), List.of(), Optional.empty(), why, source);
    }
}
