package org.misecue.shots;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.misecue.prep.Bowl;
import org.misecue.prep.Wording;
import org.misecue.recipe.Step;

/** Fills the templates of one step's actions in. */
final class ActionShots {

    private final Step step;
    private final String before;
    private final String tin;
    private final int takes;
    private String atHand = "";

    /**
     * @param earlier the steps before it
     * @param takes how many sets of bowls there are to film with
     */
    ActionShots(Step step, List<Step> earlier, int takes) {
        this.step = step;
        this.before = earlier.stream().map(Step::text).collect(Collectors.joining(" "));
        this.tin = TinWords.in(before + " " + step.text());
        this.takes = takes;
    }

    /**
     * All shots of an action, asked for in the order of the text; what must be said is said in the first. An amount is said at its first use only.
     *
     * @param end where the next action begins in the text
     */
    List<Draft> of(Action action, int end, Mixture mixture) {
        FoodNames names = new FoodNames(action, before, step.number(), step.text(), end, atHand);
        atHand = names.leaves();
        String sentence = Clause.around(step.text(), action.place()).of(step.text());
        List<Saying> sayings = Stream.concat(
                        Sayings.amounts(names.firstUsed()).stream(),
                        Sayings.settings(action.settings(), sentence).stream())
                .toList();
        Blanks blanks = blanks(action, end, names, sentence);
        List<Hazard> hazards = action.template().hazards().stream()
                .filter(rule -> rule.holds().isEmpty() || mixture.holds(rule.holds(), action))
                .map(HazardRule::hazard)
                .toList();
        List<Draft> drafts = new ArrayList<>();
        boolean said = false;
        for (Coverage coverage : action.coverage()) {
            boolean first = !said && coverage.kind() != ShotKind.PICKUP;
            String see = blanks.fill(coverage.see());
            drafts.add(draft(
                    action,
                    coverage,
                    first ? see + unnamed(action, names) : see,
                    first ? sayings : List.of(),
                    blanks,
                    hazards));
            said |= first;
        }
        return drafts;
    }

    private Blanks blanks(Action action, int end, FoodNames names, String sentence) {
        return new Blanks(Map.of(
                Blanks.INGREDIENTS,
                names.ingredients(),
                Blanks.FOOD,
                names.food(),
                Blanks.AMOUNTS,
                Sayings.writtenAmounts(names.firstUsed()),
                Blanks.SETTINGS,
                Sayings.writtenSettings(action.settings()),
                Blanks.TIN,
                tin,
                Blanks.METHOD,
                sentence,
                Blanks.UNTIL,
                DoneWords.of(step.text().substring(action.place(), Math.max(action.place(), end)))));
    }

    private Draft draft(
            Action action, Coverage coverage, String see, List<Saying> sayings, Blanks blanks, List<Hazard> hazards) {
        boolean pickup = coverage.kind() == ShotKind.PICKUP;
        List<Integer> bowls =
                pickup ? List.of() : action.bowls().stream().map(Bowl::number).toList();
        return new Draft(
                step.number(),
                List.of(),
                action.template(),
                coverage,
                see,
                blanks.fill(coverage.hands()),
                bowls,
                sayings,
                coverage.lowerThird().map(blanks::title).orElse(""),
                !bowls.isEmpty() || coverage.oneChance() ? takes : coverage.takes(),
                hazards,
                action.isFed());
    }

    /** What goes in is always named in the first shot of its action, whether or not the template asks for it. */
    private static String unnamed(Action action, FoodNames names) {
        boolean named = action.coverage().stream()
                .map(Coverage::see)
                .anyMatch(text ->
                        text.contains("{" + Blanks.INGREDIENTS + "}") || text.contains("{" + Blanks.METHOD + "}"));
        return action.isFed() && !named ? "; with " + Wording.list(names.goingIn()) : "";
    }
}
