package org.misecue.prep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Household;
import org.misecue.quantity.Rationals;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;

/** The jobs with lead times: what the ingredients ask for, what the method waits for, oven and tins, and the weighing. */
final class JobPlanner {

    private static final String COMMON = "common practice, no source";
    private static final Duration TIN_LINED = Duration.ofMinutes(15);

    private static final List<String> COOKING = List.of("bake", "simmer", "boil", "toast", "fry", "caramelise");

    /** The waiting that a filming day cannot wait for: what stands in afterwards is made before. */
    private static final Map<String, String> WAITING = orderedWaiting();

    private final Recipe recipe;
    private final Pantry pantry;
    private final FilmingClock clock;
    private final OvenJobs ovens;

    JobPlanner(Recipe recipe, Pantry pantry, PrepSettings settings) {
        this.recipe = recipe;
        this.pantry = pantry;
        this.clock = new FilmingClock(recipe.steps(), settings.sets().takes(), settings.firstShot());
        this.ovens = new OvenJobs(recipe, settings.ovens(), clock);
    }

    /** @param bowls those of all takes */
    List<Job> plan(List<Bowl> bowls, List<ToHand> toHand) {
        List<Job> jobs = new ArrayList<>();
        jobs.addAll(new IngredientJobs(pantry, clock).of(bowls, toHand));
        jobs.addAll(waitingJobs());
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

    /** A stand-in for each wait: begun so that it is ready when the step that waits has been filmed. */
    private List<Job> waitingJobs() {
        List<Job> jobs = new ArrayList<>();
        for (Step step : recipe.steps()) {
            Duration wait = waiting(step);
            WAITING.entrySet().stream()
                    .filter(row -> !wait.isZero() && waitsTo(row.getKey(), step))
                    .findFirst()
                    .ifPresent(row -> jobs.add(job(
                            row.getValue() + ", to stand in after step " + step.number(),
                            wait,
                            "the end of step " + step.number(),
                            step.number(),
                            "Step %d waits %s; with one ready beforehand the camera need not."
                                    .formatted(step.number(), Wording.duration(wait)),
                            "the recipe, step " + step.number())));
        }
        return jobs;
    }

    private static boolean waitsTo(String what, Step step) {
        return step.techniques().contains(what)
                || step.settings().stream().anyMatch(setting -> setting.what().equalsIgnoreCase(what));
    }

    /** How long the step waits: what it states, or else its unattended time beyond what it cooks. */
    private static Duration waiting(Step step) {
        Duration stated = durations(step, true);
        if (!stated.isZero()) {
            return stated;
        }
        Duration rest = step.unattended().minus(durations(step, false));
        boolean cooks = step.techniques().stream().anyMatch(COOKING::contains);
        boolean unclear = cooks && durations(step, false).isZero();
        return rest.isNegative() || unclear ? Duration.ZERO : rest;
    }

    private static Duration durations(Step step, boolean waiting) {
        return step.settings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.DURATION && isWaiting(setting.what()) == waiting)
                .map(JobPlanner::longest)
                .reduce(Duration.ZERO, Duration::plus);
    }

    private static boolean isWaiting(String what) {
        return WAITING.containsKey(what.toLowerCase(Locale.ROOT));
    }

    private static Duration longest(Setting setting) {
        return setting.quantity()
                .mostInBase(Household.METRIC)
                .map(minutes -> Duration.ofSeconds(
                        Rationals.rounded(minutes.multiply(Rationals.of(60)), 0).longValue()))
                .orElse(Duration.ZERO);
    }

    private static Map<String, String> orderedWaiting() {
        Map<String, String> rows = new LinkedHashMap<>();
        rows.put("prove", "Set a second dough to prove");
        rows.put("chill", "Put a second one to chill");
        rows.put("soak", "Put a second lot to soak");
        rows.put("cool", "Have a second one made and set to cool");
        rows.put("rest", "Have a second one made and left to rest");
        rows.put("set", "Have a second one made and left to set");
        return rows;
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
