package org.misecue.worktop;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.misecue.align.Alignment;
import org.misecue.narration.Cue;
import org.misecue.narration.Narration;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;
import org.misecue.search.KitchenNames;
import org.misecue.search.Passage;
import org.misecue.search.SaidAmount;

/** What a search can find of an episode. */
final class Findable {

    private Findable() {}

    /** What was said, and the steps at the time when they are on. */
    static List<Passage> passages(Recipe recipe, List<Narration> narrations, Alignment alignment, NamedAmounts named) {
        List<Passage> passages = new ArrayList<>();
        for (Narration narration : narrations) {
            passages.addAll(passages(narration, cue -> alignment.stepAt(narration.source(), cue.start()), named));
        }
        for (Step step : recipe.steps()) {
            alignment.spans().stream()
                    .filter(span -> span.step() == step.number())
                    .findFirst()
                    .ifPresent(span -> passages.add(
                            Passage.step(step.number(), step.text(), span.source(), span.start(), span.end())));
        }
        return passages;
    }

    /** What was said, where there is no recipe to tell the steps. */
    static List<Passage> passages(List<Narration> narrations) {
        return narrations.stream()
                .flatMap(narration -> passages(narration, cue -> 0, NamedAmounts.NONE).stream())
                .toList();
    }

    private static List<Passage> passages(Narration narration, ToIntFunction<Cue> step, NamedAmounts named) {
        SaidAmounts amounts = SaidAmounts.in(narration);
        List<Passage> passages = new ArrayList<>();
        for (int i = 0; i < narration.cues().size(); i++) {
            Cue cue = narration.cues().get(i);
            List<SaidAmount> said = new ArrayList<>(amounts.ofCue(i));
            said.addAll(named.in(narration, cue));
            passages.add(Passage.of(narration.source(), cue, step.applyAsInt(cue), List.copyOf(said)));
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
