package org.misecue.worktop;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.misecue.align.Alignment;
import org.misecue.align.StepSpan;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.search.KitchenNames;
import org.misecue.search.Passage;
import org.misecue.search.SaidAmount;
import org.misecue.search.Topic;

/** What a search can find of an episode. */
final class Findable {

    private Findable() {}

    /** What was said, and the ingredients and steps at the time when they are on. */
    static List<Passage> passages(
            Recipe recipe, List<Narration> narrations, Alignment alignment, NamedAmounts named, Pantry pantry) {
        Topics topics = new Topics(recipe, pantry);
        List<Passage> passages = new ArrayList<>();
        for (Narration narration : narrations) {
            Map<Integer, Set<Topic>> about = topics.in(narration);
            passages.addAll(passages(
                    narration,
                    cue -> alignment.stepAt(narration.source(), cue.start()),
                    named,
                    cue -> about.getOrDefault(cue, Set.of())));
        }
        for (Step step : recipe.steps()) {
            alignment
                    .begin(step.number())
                    .ifPresent(span -> passages.add(
                            Passage.step(step.number(), step.text(), span.source(), span.start(), span.end())
                                    .about(topics.ofStep(step))));
        }
        for (int i = 0; i < recipe.lines().size(); i++) {
            passages.add(ingredient(recipe, i, alignment).about(topics.ofLine(i)));
        }
        return passages;
    }

    private static Passage ingredient(Recipe recipe, int number, Alignment alignment) {
        IngredientLine line = recipe.lines().get(number);
        Optional<StepSpan> used = recipe.steps().stream()
                .filter(step -> step.uses().stream().anyMatch(use -> use.in(recipe) == line))
                .findFirst()
                .flatMap(step -> alignment.begin(step.number()));
        return used.map(span -> Passage.ingredient(line.text(), span.step(), span.source(), span.start(), span.end()))
                .orElseGet(() -> Passage.ingredient(line.text(), 0, recipe.source(), Duration.ZERO, Duration.ZERO));
    }

    /** What was said, where there is no recipe to tell the steps. */
    static List<Passage> passages(List<Narration> narrations) {
        return narrations.stream()
                .flatMap(narration -> passages(narration, cue -> 0, NamedAmounts.NONE, cue -> Set.of()).stream())
                .toList();
    }

    private static List<Passage> passages(
            Narration narration, ToIntFunction<Cue> step, NamedAmounts named, IntFunction<Set<Topic>> topics) {
        SaidAmounts amounts = SaidAmounts.in(narration);
        List<Passage> passages = new ArrayList<>();
        for (int i = 0; i < narration.cues().size(); i++) {
            Cue cue = narration.cues().get(i);
            List<SaidAmount> said = new ArrayList<>(amounts.ofCue(i));
            said.addAll(named.in(narration, cue));
            passages.add(Passage.of(narration.source(), cue, step.applyAsInt(cue), List.copyOf(said))
                    .about(topics.apply(i)));
        }
        return passages;
    }

    /** What is called by several names. */
    static List<Set<String>> names(Pantry pantry) {
        return Stream.concat(pantry.all().stream().map(Findable::names), KitchenNames.groups().stream())
                .toList();
    }

    private static Set<String> names(Ingredient ingredient) {
        Set<String> names = new LinkedHashSet<>();
        names.add(ingredient.name());
        names.addAll(ingredient.names());
        return names;
    }
}
