package org.misecue.prep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.misecue.pantry.LeadTime;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;

/** The jobs with lead times: what the ingredients ask for, what the method waits for, oven and tins, and the weighing. */
final class JobPlanner {

    private static final String COMMON = "common practice, no source";
    private static final Duration OVEN_HEATS = Duration.ofMinutes(30);
    private static final Duration TIN_LINED = Duration.ofMinutes(15);
    private static final Duration BOWL_WEIGHED = Duration.ofMinutes(2);

    private final Recipe recipe;
    private final Pantry pantry;
    private final FilmingClock clock;

    JobPlanner(Recipe recipe, Pantry pantry, PrepSettings settings) {
        this.recipe = recipe;
        this.pantry = pantry;
        this.clock = new FilmingClock(recipe.steps(), settings.sets().takes(), settings.firstShot());
    }

    /** @param bowls those of all takes */
    List<Job> plan(List<Bowl> bowls, List<ToHand> toHand) {
        List<Job> jobs = new ArrayList<>();
        jobs.addAll(ingredientJobs(bowls, toHand));
        jobs.addAll(ovenJobs());
        jobs.addAll(tinJobs());
        if (!bowls.isEmpty()) {
            jobs.add(job(
                    "Weigh out and label " + Wording.count(bowls.size(), "bowl") + "; chilled things last",
                    BOWL_WEIGHED.multipliedBy(bowls.size()),
                    "the first shot",
                    0,
                    "A bowl takes about 2 minutes to weigh, check and label.",
                    "an estimate, no source"));
        }
        jobs.sort(Comparator.comparing((Job job) -> clock.startBefore(job.step(), job.before()))
                .thenComparing(Job::step));
        return jobs;
    }

    /** One job for all bowls that want the same done equally long before; the earliest of them sets the time. */
    private List<Job> ingredientJobs(List<Bowl> bowls, List<ToHand> toHand) {
        Map<LeadTime, List<Bowl>> wanting = new LinkedHashMap<>();
        for (Bowl bowl : bowls) {
            for (Content content : bowl.contents()) {
                for (LeadTime lead : pantry.leadTimes(content.ingredient(), content.preparation())) {
                    wanting.computeIfAbsent(lead, key -> new ArrayList<>()).add(bowl);
                }
            }
        }
        List<Job> jobs = new ArrayList<>();
        wanting.forEach((lead, wanted) -> {
            int step = earliest(wanted.stream().map(Bowl::step).toList());
            List<Integer> numbers = wanted.stream().map(Bowl::number).distinct().toList();
            jobs.add(job(
                    lead.what(),
                    lead.ahead(),
                    Wording.bowls(numbers) + stepWords(step),
                    step,
                    lead.why(),
                    lead.source()));
        });
        for (ToHand thing : toHand) {
            int step = thing.steps().stream().findFirst().orElse(0);
            for (LeadTime lead :
                    pantry.leadTimes(thing.line().ingredient(), thing.line().preparation())) {
                if (!wanting.containsKey(lead)) {
                    jobs.add(job(
                            lead.what(), lead.ahead(), "to hand" + stepWords(step), step, lead.why(), lead.source()));
                }
            }
        }
        return jobs;
    }

    private int earliest(List<Integer> steps) {
        return steps.stream().min(Comparator.comparing(clock::begin)).orElse(0);
    }

    private static String stepWords(int step) {
        return step == 0 ? "" : ", step " + step;
    }

    private List<Job> ovenJobs() {
        List<Job> jobs = new ArrayList<>();
        List<Setting> seen = new ArrayList<>();
        for (Setting setting : recipe.allSettings()) {
            if (setting.kind() != Setting.Kind.OVEN_TEMPERATURE
                    || seen.stream().anyMatch(other -> other.quantity().equals(setting.quantity()))) {
                continue;
            }
            seen.add(setting);
            int needed = stepNeeding("bake", setting.step());
            jobs.add(job(
                    "Heat the oven to " + SettingWords.oven(setting),
                    OVEN_HEATS,
                    needed == 0 ? "baking" : "step " + needed,
                    needed,
                    "Ovens take 15 to 30 minutes to heat through; check with an oven thermometer.",
                    COMMON));
        }
        return jobs;
    }

    private List<Job> tinJobs() {
        return recipe.allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.PAN)
                .map(setting -> {
                    int needed = stepNeeding("bake", setting.step());
                    return job(
                            "Have ready, greased and lined as the method says: " + SettingWords.tin(setting, 1),
                            TIN_LINED,
                            needed == 0 ? "baking" : "step " + needed,
                            needed,
                            "A raised mixture does not wait for its tin.",
                            COMMON);
                })
                .distinct()
                .toList();
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
        return new Job(what, before, forWhat, step, clock.clockTime(step, before), why, source);
    }
}
