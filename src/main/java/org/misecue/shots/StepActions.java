package org.misecue.shots;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.misecue.prep.Bowl;
import org.misecue.prep.StepWords;
import org.misecue.prep.ToHand;
import org.misecue.recipe.Step;

/**
 * The actions of one step: each with its template and what goes in. "Cream the butter and sugar, then beat in the eggs":
 * an ingredient goes in during the last adding action before its name in the sentence, or else in the next one that
 * gathers what was named. What no such action takes is filmed by the default template. Ovens, tins and racks take
 * nothing.
 */
final class StepActions {

    /** Letters; shorter words of a name are "of", "dry", "raw". */
    private static final int SHORTEST_NAME = 4;

    private final Step step;
    private final ShotTemplates templates;
    private final List<Action> actions;

    private StepActions(Step step, ShotTemplates templates) {
        this.step = step;
        this.templates = templates;
        this.actions = new ArrayList<>(ActionFinder.find(step, templates));
    }

    /**
     * What an earlier step took and this one does not name is in the mixture by now, and goes in no more.
     *
     * @param bowls those of one take that this step uses
     */
    static List<Action> of(Step step, List<Bowl> bowls, List<ToHand> loose, ShotTemplates templates) {
        StepActions made = new StepActions(step, templates);
        for (Bowl bowl : bowls) {
            OptionalInt named = made.placeOf(bowl);
            if (named.isPresent() || bowl.step() == step.number()) {
                made.actionFor(named).bowls().add(bowl);
            }
        }
        for (ToHand thing : loose) {
            made.actionFor(thing).loose().add(thing);
        }
        made.dropRepeated();
        SettingPlaces.share(step, made.actions, templates);
        if (made.actions.isEmpty()) {
            made.actions.add(Action.of(templates.of(ShotTemplates.DEFAULT), 0, 0));
        }
        return List.copyOf(made.actions);
    }

    private OptionalInt placeOf(Bowl bowl) {
        return bowl.contents().stream()
                .map(content -> whereNamed(content.ingredient()))
                .flatMapToInt(OptionalInt::stream)
                .findFirst();
    }

    /** By its name or the last word of it; or else by a word before, for methods call vanilla extract "the vanilla". */
    private OptionalInt whereNamed(String ingredient) {
        return Stream.concat(
                        Stream.of(ingredient),
                        Stream.of(ingredient.split("[\\s-]+"))
                                .filter(word -> word.length() >= SHORTEST_NAME && !word.endsWith("ing")))
                .map(name -> StepWords.whereNamed(step.text(), name))
                .flatMapToInt(OptionalInt::stream)
                .findFirst();
    }

    /** "Butter, for greasing" goes with the greasing, whatever the step says. */
    private Action actionFor(ToHand thing) {
        String purpose = thing.line().preparation().toLowerCase(Locale.ROOT);
        return actions.stream()
                .filter(action ->
                        purpose.contains("for " + stem(action.template().technique())))
                .findFirst()
                .orElseGet(() ->
                        actionFor(StepWords.whereNamed(step.text(), thing.line().ingredient())));
    }

    /** "greas", "roll", "lin": what the words for a technique begin with. */
    private static String stem(String technique) {
        String word = technique.split("-")[0];
        return word.endsWith("e") ? word.substring(0, word.length() - 1) : word;
    }

    private Action actionFor(OptionalInt named) {
        if (named.isEmpty()) {
            return first(action -> takes(action, Adds.AROUND)).orElseGet(() -> plainly(0));
        }
        int place = named.getAsInt();
        Clause clause = Clause.around(step.text(), place);
        List<Action> near =
                actions.stream().filter(action -> clause.holds(action.place())).toList();
        return near.stream()
                .filter(action -> takes(action, Adds.AFTER, Adds.AROUND) && action.place() <= place)
                .reduce((earlier, later) -> later)
                .or(() -> near.stream()
                        .filter(action -> takes(action, Adds.AROUND) && action.place() > place)
                        .findFirst())
                .orElseGet(() -> plainly(clause.start()));
    }

    private static boolean takes(Action action, Adds... any) {
        return Stream.of(any).anyMatch(adds -> adds == action.template().adds());
    }

    private Optional<Action> first(Predicate<Action> wanted) {
        return actions.stream().filter(wanted).findFirst();
    }

    /** The shot of a sentence that no template knows. */
    private Action plainly(int place) {
        ShotTemplate plain = templates.of(ShotTemplates.DEFAULT);
        return first(action -> action.place() == place && action.template().equals(plain))
                .orElseGet(() -> {
                    Action action = Action.of(plain, place, place);
                    actions.add(action);
                    actions.sort(Comparator.comparingInt(Action::place));
                    return action;
                });
    }

    /** "Simmer, stirring, then simmer again" is one shot; so is what has none that fits. */
    private void dropRepeated() {
        List<Action> kept = new ArrayList<>();
        for (Action action : actions) {
            boolean again = kept.stream().anyMatch(other -> other.template()
                    .technique()
                    .equals(action.template().technique()));
            if (!action.coverage().isEmpty() && (action.isFed() || !again)) {
                kept.add(action);
            }
        }
        actions.clear();
        actions.addAll(kept);
    }
}
