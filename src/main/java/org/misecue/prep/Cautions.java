package org.misecue.prep;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Step;

/** Finds the rows of {@code cautions.yaml} that this day's work calls for, and where. */
final class Cautions {

    private final Recipe recipe;
    private final Pantry pantry;

    Cautions(Recipe recipe, Pantry pantry) {
        this.recipe = recipe;
        this.pantry = pantry;
    }

    /** @param bowls those of one take */
    List<Caution> find(List<Bowl> bowls, List<ToHand> toHand) {
        return Table.ROWS.stream().flatMap(rule -> apply(rule, bowls, toHand)).toList();
    }

    private Stream<Caution> apply(CautionRule rule, List<Bowl> bowls, List<ToHand> toHand) {
        if (rule.always()) {
            return Stream.of(new Caution(rule.what(), rule.brief(), "all day", List.of(), List.of(), rule.source()));
        }
        List<Integer> steps = recipe.steps().stream()
                .filter(step -> concerns(rule, step))
                .map(Step::number)
                .toList();
        List<Integer> bowlNumbers = bowls.stream()
                .filter(bowl -> concerns(rule, bowl) && (!rule.both() || steps.contains(bowl.step())))
                .map(Bowl::number)
                .toList();
        List<String> loose = toHand.stream()
                .filter(thing -> !rule.both() && concerns(rule, thing.line(), thing.allergens()))
                .map(thing -> thing.line().ingredient())
                .distinct()
                .toList();
        List<String> where = Stream.of(Wording.bowls(bowlNumbers), Wording.list(loose), Wording.steps(steps))
                .filter(words -> !words.isEmpty())
                .toList();
        boolean meets = !rule.both() || (!steps.isEmpty() && !bowlNumbers.isEmpty());
        return where.isEmpty() || !meets
                ? Stream.empty()
                : Stream.of(new Caution(
                        rule.what(), rule.brief(), String.join("; ", where), bowlNumbers, steps, rule.source()));
    }

    private static boolean concerns(CautionRule rule, Step step) {
        return rule.techniques().stream().anyMatch(step.techniques()::contains);
    }

    private boolean concerns(CautionRule rule, Bowl bowl) {
        return bowl.contents().stream().anyMatch(content -> concerns(rule, content.line(), bowl.allergens()));
    }

    private boolean concerns(CautionRule rule, IngredientLine line, Carries allergens) {
        if (rule.allergens() && !allergens.certain().isEmpty()) {
            return true;
        }
        String done = " " + line.preparation().toLowerCase(Locale.ROOT).replace(',', ' ') + " ";
        if (rule.words().stream().anyMatch(word -> done.contains(" " + word + " "))) {
            return true;
        }
        Optional<Ingredient> known = pantry.find(line.ingredient());
        return known.filter(ingredient -> (rule.chilled()
                                && ingredient.chilled()
                                && !rule.except().contains(ingredient.name()))
                        || rule.ingredients().contains(ingredient.name()))
                .isPresent();
    }

    /** Read on first use. */
    private static final class Table {
        static final List<CautionRule> ROWS = Resources.yaml("cautions.yaml", new TypeReference<>() {});
    }
}
