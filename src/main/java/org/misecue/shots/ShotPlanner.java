package org.misecue.shots;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.prep.Bowl;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.ToHand;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.scale.ScaledRecipe;

/**
 * Makes the shot list: kitchen, welcome and ingredients first, then every action of every step by its template, the
 * reveal last. The way into this package.
 */
public final class ShotPlanner {

    private final Recipe recipe;
    private final PrepPlan prep;
    private final ShotTemplates templates;
    private final Mixture mixture = new Mixture();
    private final Story story = new Story();

    private ShotPlanner(Recipe recipe, PrepPlan prep, ShotTemplates templates) {
        this.recipe = recipe;
        this.prep = prep;
        this.templates = templates;
    }

    /**
     * The list for one recipe.
     *
     * @param prep the mise en place of the same recipe, whose bowl numbers the shots name
     */
    public static ShotPlan plan(ScaledRecipe scaled, PrepPlan prep, ShotTemplates templates) {
        ShotPlanner planner = new ShotPlanner(scaled.recipe(), prep, templates);
        planner.opening();
        planner.recipe.steps().forEach(planner::step);
        planner.film(ShotTemplates.REVEAL, List.of(), List.of());
        Map<Integer, String> method =
                planner.recipe.steps().stream().collect(Collectors.toMap(Step::number, Step::text));
        return new ShotPlan(planner.recipe.title(), planner.story.shots(), method);
    }

    private void opening() {
        film(ShotTemplates.KITCHEN, List.of(), List.of());
        List<Saying> yields = Sayings.settings(settings(Setting.Kind.YIELD), "");
        film(
                ShotTemplates.WELCOME,
                Stream.concat(Stream.of(new Saying("", recipe.title(), "")), yields.stream())
                        .toList(),
                List.of());
        List<Integer> all = prep.bowlsOf(1).stream().map(Bowl::number).toList();
        film(ShotTemplates.LINE_UP, Sayings.settings(settings(Setting.Kind.PAN), ""), all);
    }

    /** Figures of the recipe as a whole. */
    private List<Setting> settings(Setting.Kind kind) {
        return recipe.settings().stream()
                .filter(setting -> setting.kind() == kind)
                .toList();
    }

    /** The shots of a template that belongs to no step; what is to be said is said in the first. */
    private void film(String technique, List<Saying> sayings, List<Integer> bowls) {
        ShotTemplate template = templates.of(technique);
        Blanks blanks = new Blanks(Map.of(
                Blanks.DISH,
                recipe.title(),
                Blanks.YIELD,
                Sayings.writtenSettings(settings(Setting.Kind.YIELD)),
                Blanks.SETTINGS,
                Sayings.writtenSettings(settings(Setting.Kind.PAN))));
        List<Hazard> hazards =
                template.hazards().stream().map(HazardRule::hazard).toList();
        for (Coverage coverage : template.coverage()) {
            boolean first = coverage.equals(template.coverage().get(0));
            story.add(new Draft(
                    0,
                    List.of(),
                    template,
                    coverage,
                    blanks.fill(coverage.see()),
                    blanks.fill(coverage.hands()),
                    bowls,
                    first ? sayings : List.of(),
                    coverage.lowerThird().map(blanks::title).orElse(""),
                    coverage.oneChance() ? prep.takes() : coverage.takes(),
                    hazards,
                    !bowls.isEmpty()));
        }
    }

    private void step(Step step) {
        List<Bowl> bowls = prep.bowlsOf(1).stream()
                .filter(bowl ->
                        bowl.step() == step.number() || bowl.laterSteps().contains(step.number()))
                .toList();
        List<ToHand> loose = prep.toHand().stream()
                .filter(thing -> thing.steps().contains(step.number()))
                .toList();
        mixture.begin(step, bowls);
        List<Step> earlier = recipe.steps().subList(0, recipe.steps().indexOf(step));
        ActionShots shots = new ActionShots(step, earlier, prep.takes());
        List<Action> actions = StepActions.of(step, bowls, loose, templates);
        for (int i = 0; i < actions.size(); i++) {
            Action action = actions.get(i);
            int end = i + 1 < actions.size()
                    ? actions.get(i + 1).place()
                    : step.text().length();
            mixture.add(action);
            story.add(shots.of(action, end, mixture));
            if (action.template().cooks()) {
                mixture.cook();
            }
        }
    }
}
