package org.misecue.prep;

import com.fasterxml.jackson.core.type.TypeReference;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.misecue.pantry.Pantry;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.MethodOrder;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Stretch;

/** Finds what to weigh out once more, by the table {@code spares.yaml}: for likely failures and for the hero shot. */
final class SpareFinder {

    private static final List<SpareRule> RULES = Resources.yaml("spares.yaml", new TypeReference<>() {});

    private final Recipe recipe;
    private final Pantry pantry;
    private final Weights weights;
    private final List<Bowl> bowls;
    private final List<Stretch> stretches;

    /** @param bowls those of one take */
    SpareFinder(Recipe recipe, Pantry pantry, Weights weights, List<Bowl> bowls) {
        this.recipe = recipe;
        this.pantry = pantry;
        this.weights = weights;
        this.bowls = bowls;
        this.stretches = MethodOrder.of(recipe).stretches();
    }

    /** A content of a bowl that a stretch of the method takes. */
    private record Taken(Bowl bowl, Content content) {}

    /** In the order of the method, what fails easily first. */
    List<Spare> find(boolean failures, boolean hero) {
        List<Spare> spares = new ArrayList<>();
        for (SpareRule rule : RULES) {
            if (rule.finish() ? hero : failures) {
                spares.addAll(of(rule));
            }
        }
        spares.sort(Comparator.comparing(Spare::kind).thenComparingInt(Spare::step));
        return List.copyOf(spares);
    }

    private List<Spare> of(SpareRule rule) {
        List<Taken> taken = (rule.finish() ? last() : stretches)
                .stream()
                        .filter(stretch -> rule.holdsFor(stretch.techniques()))
                        .flatMap(stretch -> taken(stretch).stream())
                        .filter(each -> rule.holdsFor(each.content().ingredient()))
                        .filter(each ->
                                !rule.pieces() || each.content().weighed().dimension() == Dimension.COUNT)
                        .distinct()
                        .toList();
        if (rule.one() && !taken.isEmpty()) {
            return List.of(spare(one(taken.get(0).content()), taken, rule));
        }
        return taken.stream()
                .map(each -> spare(each.content(), List.of(each), rule))
                .toList();
    }

    /** The last stretch that takes something. */
    private List<Stretch> last() {
        return stretches.stream()
                .filter(stretch -> !stretch.uses().isEmpty())
                .reduce((one, other) -> other)
                .map(List::of)
                .orElse(List.of());
    }

    private List<Taken> taken(Stretch stretch) {
        List<Taken> taken = new ArrayList<>();
        stretch.uses().forEach(use -> {
            IngredientLine line = use.in(recipe);
            bowls.stream().filter(bowl -> bowl.step() == stretch.step()).forEach(bowl -> bowl.contents().stream()
                    .filter(content -> content.line().equals(line))
                    .forEach(content -> taken.add(new Taken(bowl, content))));
        });
        return taken;
    }

    private Content one(Content content) {
        Quantity piece = Quantity.of(Rationals.ONE, Unit.EACH);
        return new Content(content.line(), piece, weights.grams(piece, content.ingredient()));
    }

    private Spare spare(Content content, List<Taken> taken, SpareRule rule) {
        return new Spare(
                content,
                rule.finish() ? Spare.Kind.HERO : Spare.Kind.FAILURE,
                taken.get(0).bowl().step(),
                taken.stream().map(each -> each.bowl().number()).distinct().toList(),
                rule.why(),
                rule.source(),
                Carries.of(List.of(content.line()), pantry));
    }
}
