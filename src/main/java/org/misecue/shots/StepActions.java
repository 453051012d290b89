package org.misecue.shots;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.misecue.prep.Bowl;
import org.misecue.prep.StepWords;
import org.misecue.prep.ToHand;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;

/**
 * The actions of one step: each with its template and what goes in. "Cream the butter and sugar, then beat in the eggs":
 * an ingredient goes in during the last adding action named before it, or the first one where none stands before.
 */
final class StepActions {

    /** One action with what it needs. */
    record Action(ShotTemplate template, List<Bowl> bowls, List<ToHand> loose, List<Setting> settings) {

        private static Action of(ShotTemplate template) {
            return new Action(template, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }
    }

    private static final String UNNAMED = "";

    private final Step step;
    private final Map<String, Action> actions = new LinkedHashMap<>();
    private final Map<String, Integer> places = new LinkedHashMap<>();

    private StepActions(Step step, ShotTemplates templates) {
        this.step = step;
        List<String> techniques = step.techniques().isEmpty() ? List.of(UNNAMED) : step.techniques();
        int last = 0;
        for (String technique : techniques) {
            ShotTemplate template = templates.of(technique);
            last = place(template).orElse(last);
            actions.putIfAbsent(technique, Action.of(template));
            places.putIfAbsent(technique, last);
        }
    }

    /** @param bowls those of one take that this step uses */
    static List<Action> of(Step step, List<Bowl> bowls, List<ToHand> loose, ShotTemplates templates) {
        StepActions made = new StepActions(step, templates);
        for (Bowl bowl : bowls) {
            made.actionFor(bowl.contents().get(0).ingredient()).bowls().add(bowl);
        }
        for (ToHand thing : loose) {
            made.actionFor(thing).loose().add(thing);
        }
        for (Setting setting : step.settings()) {
            made.actionFor(setting).settings().add(setting);
        }
        return List.copyOf(made.actions.values());
    }

    private OptionalInt place(ShotTemplate template) {
        return place(template, step.text());
    }

    private static OptionalInt place(ShotTemplate template, String words) {
        String text = words.toLowerCase(Locale.ROOT);
        return template.words().stream()
                .map(word -> Pattern.compile("\\b" + Pattern.quote(word)).matcher(text))
                .filter(Matcher::find)
                .mapToInt(Matcher::start)
                .min();
    }

    /** "Butter, for greasing" goes with the greasing, whatever the step says. */
    private Action actionFor(ToHand thing) {
        return actions.values().stream()
                .filter(action ->
                        place(action.template(), thing.line().preparation()).isPresent())
                .findFirst()
                .orElseGet(() -> actionFor(thing.line().ingredient()));
    }

    private Action actionFor(String ingredient) {
        int named = StepWords.whereNamed(step.text(), ingredient).orElse(Integer.MAX_VALUE);
        Action chosen = null;
        for (Map.Entry<String, Action> entry : actions.entrySet()) {
            boolean before = places.getOrDefault(entry.getKey(), 0) <= named;
            if (entry.getValue().template().adds() && (chosen == null || before)) {
                chosen = entry.getValue();
            }
        }
        return chosen != null ? chosen : actions.values().iterator().next();
    }

    /** A setting is said at the action it belongs to; where that is not filmed, at the first. */
    private Action actionFor(Setting setting) {
        List<String> keys =
                switch (setting.kind()) {
                    case OVEN_TEMPERATURE -> List.of("heat-oven", "bake");
                    case PAN -> List.of("line-tin", "grease", "bake");
                    default -> List.of(setting.what().toLowerCase(Locale.ROOT));
                };
        return keys.stream()
                .map(actions::get)
                .filter(Objects::nonNull)
                .findFirst()
                .orElseGet(() -> actions.values().iterator().next());
    }
}
