package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.misecue.prep.Bowl;
import org.misecue.prep.PrepPlan;
import org.misecue.prep.ToHand;
import org.misecue.prep.Wording;
import org.misecue.recipe.Setting;
import org.misecue.recipe.Step;
import org.misecue.scale.ScaledRecipe;

/**
 * Makes the shot list: the ingredients first, then every action of every step by its template, the reveal last. The way
 * into this package.
 */
public final class ShotPlanner {

    /** What stands for the ingredients where a step names none. */
    private static final String EVERYTHING = "the mixture";

    private final PrepPlan prep;
    private final ShotTemplates templates;
    private final List<Shot> shots = new ArrayList<>();

    private ShotPlanner(PrepPlan prep, ShotTemplates templates) {
        this.prep = prep;
        this.templates = templates;
    }

    /**
     * The list for one recipe.
     *
     * @param prep the mise en place of the same recipe, whose bowl numbers the shots name
     */
    public static ShotPlan plan(ScaledRecipe scaled, PrepPlan prep, ShotTemplates templates) {
        ShotPlanner planner = new ShotPlanner(prep, templates);
        planner.lineUp(scaled);
        scaled.recipe().steps().forEach(planner::step);
        planner.film(0, new StepActions.Action(templates.of(ShotTemplates.REVEAL), List.of(), List.of(), List.of()));
        return new ShotPlan(
                scaled.recipe().title(),
                IntStream.range(0, planner.shots.size())
                        .mapToObj(i -> planner.shots.get(i).numbered(i + 1))
                        .toList());
    }

    private void lineUp(ScaledRecipe scaled) {
        List<Setting> tins = scaled.recipe().settings().stream()
                .filter(setting -> setting.kind() == Setting.Kind.PAN)
                .toList();
        ShotTemplate template = templates.of(ShotTemplates.LINE_UP);
        List<Integer> all = prep.bowlsOf(1).stream().map(Bowl::number).toList();
        for (int i = 0; i < template.coverage().size(); i++) {
            Coverage coverage = template.coverage().get(i);
            String say = i == 0 ? Sayings.settings(tins) : "";
            shots.add(shot(0, template, coverage, all, say, "", ""));
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
        StepActions.of(step, bowls, loose, templates).forEach(action -> film(step.number(), action));
    }

    /** All shots of an action; what must be said is said in the first. */
    private void film(int step, StepActions.Action action) {
        List<Integer> numbers = action.bowls().stream().map(Bowl::number).toList();
        List<String> names = Stream.concat(
                        action.bowls().stream().map(Bowl::name),
                        action.loose().stream().map(thing -> thing.line().ingredient()))
                .toList();
        String ingredients = Wording.list(names);
        List<Bowl> firstUsed =
                action.bowls().stream().filter(bowl -> bowl.step() == step).toList();
        String say = said(firstUsed, action.settings());
        String amounts = Sayings.writtenAmounts(firstUsed);
        for (Coverage coverage : action.template().coverage()) {
            boolean first = action.template().coverage().indexOf(coverage) == 0;
            add(shot(step, action.template(), coverage, numbers, first ? say : "", ingredients, amounts));
        }
    }

    /** An amount is said at its first use only. */
    private static String said(List<Bowl> firstUsed, List<Setting> settings) {
        return Stream.of(Sayings.amounts(firstUsed), Sayings.settings(settings))
                .filter(words -> !words.isEmpty())
                .reduce((amounts, figures) -> amounts + "; " + figures)
                .orElse("");
    }

    private Shot shot(
            int step,
            ShotTemplate template,
            Coverage coverage,
            List<Integer> bowls,
            String say,
            String ingredients,
            String amounts) {
        boolean usesFood = (!bowls.isEmpty() && step > 0) || coverage.oneChance();
        return new Shot(
                0,
                step,
                List.of(),
                template.technique(),
                coverage.setup(),
                coverage.camera(),
                seen(coverage, template, ingredients, amounts),
                coverage.hands(),
                bowls,
                coverage.sound(),
                say,
                title(coverage, ingredients, amounts),
                usesFood ? prep.takes() : coverage.takes(),
                coverage.oneChance(),
                template.hazards());
    }

    /** What goes in is always named in the first shot of its action, whether or not the template asks for it. */
    private static String seen(Coverage coverage, ShotTemplate template, String ingredients, String amounts) {
        boolean first = template.coverage().indexOf(coverage) == 0;
        boolean named = template.coverage().stream()
                .anyMatch(
                        any -> any.see().contains("{ingredients}") || any.see().contains("{amounts}"));
        String see = filled(coverage.see(), ingredients, amounts);
        return first && !named && !ingredients.isEmpty() ? see + "; with " + ingredients : see;
    }

    /** No title where there is nothing to name. */
    private static String title(Coverage coverage, String ingredients, String amounts) {
        String wish = coverage.lowerThird().orElse("");
        boolean nothing = ingredients.isEmpty() && wish.contains("{ingredients}");
        return nothing ? "" : filled(wish, ingredients, amounts);
    }

    private static String filled(String text, String ingredients, String amounts) {
        return text.replace("{amounts}", amounts)
                .replace("{ingredients}", ingredients.isEmpty() ? EVERYTHING : ingredients);
    }

    /** Two steps that show the very same thing one after the other are filmed once. */
    private void add(Shot shot) {
        int last = shots.size() - 1;
        if (last >= 0
                && shot.step() > 0
                && shots.get(last).step() > 0
                && shots.get(last).shows(shot)) {
            Shot before = shots.get(last);
            List<Integer> later = Stream.concat(before.laterSteps().stream(), Stream.of(shot.step()))
                    .distinct()
                    .filter(step -> step != before.step())
                    .toList();
            shots.set(last, before.covering(later));
        } else {
            shots.add(shot);
        }
    }
}
