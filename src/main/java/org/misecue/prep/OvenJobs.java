package org.misecue.prep;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;

/** Heating the oven, and heating it again where one oven has a second temperature to come to. */
final class OvenJobs {

    private static final Duration OVEN_HEATS = Duration.ofMinutes(30);
    private static final String COMMON = "common practice, no source";
    private static final String HEATING =
            "Ovens take 15 to 30 minutes to heat through; check with an oven thermometer.";

    private final Recipe recipe;
    private final int ovens;
    private final FilmingClock clock;
    private final List<Note> notes = new ArrayList<>();

    OvenJobs(Recipe recipe, int ovens, FilmingClock clock) {
        this.recipe = recipe;
        this.ovens = ovens;
        this.clock = clock;
    }

    /** A temperature with the first and the last step that bake at it; 0 where none does. */
    private record Heat(Setting setting, int first, int last) {

        String words() {
            return SettingWords.oven(setting);
        }
    }

    /** Known only then: {@link #notes}. */
    List<Job> of() {
        List<Job> jobs = new ArrayList<>();
        List<Heat> heats = heats();
        for (int i = 0; i < heats.size(); i++) {
            Heat heat = heats.get(i);
            Optional<Heat> before = i < ovens ? Optional.empty() : Optional.of(heats.get(i - ovens));
            Optional<String> change = before.map(earlier -> changed(earlier, heat));
            change.ifPresent(sentence ->
                    notes.add(new Note(Place.of(recipe.source(), heat.setting().line()), sentence)));
            if (before.isEmpty() || isBetween(before.get(), heat)) {
                jobs.add(job(
                        heat,
                        change.map(sentence -> Wording.upperFirst(sentence) + ".")
                                .orElse("")));
            }
        }
        return jobs;
    }

    private Job job(Heat heat, String change) {
        return new Job(
                "Heat the oven to " + heat.words(),
                OVEN_HEATS,
                heat.first() == 0 ? "baking" : "step " + heat.first(),
                heat.first(),
                clock.clockTime(heat.first(), OVEN_HEATS),
                List.of(),
                Optional.empty(),
                (HEATING + " " + change).strip(),
                COMMON);
    }

    /** What one oven for two temperatures asks of the day. */
    List<Note> notes() {
        return List.copyOf(notes);
    }

    /** Each temperature that an oven must come to, in order; each once where there is an oven for each. */
    private List<Heat> heats() {
        List<Setting> stated = recipe.allSettings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.OVEN_TEMPERATURE)
                .toList();
        long different = stated.stream().map(Setting::quantity).distinct().count();
        List<Setting> kept = new ArrayList<>();
        for (Setting setting : stated) {
            List<Setting> same = different <= ovens || kept.isEmpty() ? kept : List.of(kept.get(kept.size() - 1));
            if (same.stream().noneMatch(other -> other.quantity().equals(setting.quantity()))) {
                kept.add(setting);
            }
        }
        List<Heat> heats = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            int from = kept.get(i).step();
            int to = i + 1 < kept.size() ? kept.get(i + 1).step() : Integer.MAX_VALUE;
            int first = bakes(from, Integer.MAX_VALUE).findFirst().orElse(from);
            heats.add(new Heat(kept.get(i), first, bakes(from, to).max().orElse(first)));
        }
        return heats;
    }

    private IntStream bakes(int from, int before) {
        return recipe.steps().stream()
                .filter(step -> step.techniques().contains("bake"))
                .mapToInt(Step::number)
                .filter(number -> number >= from && number < before);
    }

    /** Whether the oven is changed between two steps, and not in the course of one. */
    private static boolean isBetween(Heat from, Heat to) {
        return from.last() < to.first();
    }

    private String changed(Heat from, Heat to) {
        if (!isBetween(from, to)) {
            return "step %d itself takes the oven from %s to %s".formatted(to.first(), from.words(), to.words());
        }
        Duration late = clock.end(from.last()).minus(clock.startBefore(to.first(), OVEN_HEATS));
        String wait = late.isNegative() || late.isZero()
                ? ""
                : "; step %d may have to wait %s for it".formatted(to.first(), Wording.duration(late));
        String oven = ovens == 1 ? "the one oven" : "an oven";
        return "%s must change from %s after step %d to %s before step %d%s"
                .formatted(oven, from.words(), from.last(), to.words(), to.first(), wait);
    }
}
