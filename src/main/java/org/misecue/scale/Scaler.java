package org.misecue.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Pantry;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.Dimension;
import org.misecue.quantity.KitchenRounding;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.Component;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import tech.units.indriya.function.RationalNumber;

/** Scales a recipe: every line exactly, then rounded as a person weighs. */
public final class Scaler {

    private final Recipe recipe;
    private final RationalNumber factor;
    private final ScaleRules rules;
    private final Pantry pantry;
    private final ScaleWarnings warnings;

    private Scaler(Recipe recipe, RationalNumber factor, ScaleRules rules, Pantry pantry) {
        this.recipe = recipe;
        this.factor = factor;
        this.rules = rules;
        this.pantry = pantry;
        this.warnings = new ScaleWarnings(recipe, factor, rules);
    }

    /**
     * The recipe for a batch. The written batch keeps every quantity as written.
     *
     * @throws org.misecue.notice.BadInput if the recipe does not state the yield, tin or ingredient that the batch is measured by
     */
    public static ScaledRecipe scale(Recipe recipe, Batch batch, ScaleRules rules, Pantry pantry) {
        BatchFactor factor = BatchFactor.of(recipe, batch, rules, pantry);
        Scaler scaler = new Scaler(recipe, factor.value(), rules, pantry);
        ScaledRecipe scaled = new ScaledRecipe(recipe, factor.value(), scaler.lines(), List.of());
        List<Note> notes = new ArrayList<>(factor.notes());
        notes.addAll(RoomWarnings.of(scaled, factor.tins(), rules));
        notes.addAll(scaler.warnings.forLines());
        return scaled.warning(notes);
    }

    private List<WeighedLine> lines() {
        List<WeighedLine> lines = new ArrayList<>();
        for (Component component : recipe.components()) {
            for (IngredientLine line : component.lines()) {
                lines.add(weighed(component.name(), line));
            }
        }
        return List.copyOf(lines);
    }

    private WeighedLine weighed(String component, IngredientLine line) {
        Optional<Ingredient> ingredient = pantry.find(line.ingredient());
        Optional<Quantity> exact = line.quantity().map(quantity -> quantity.times(factor));
        Optional<KitchenRounding.Rounded> rounded = exact.map(quantity -> rounded(line, quantity, ingredient));
        Optional<Quantity> weighed = rounded.map(KitchenRounding.Rounded::quantity);
        return new WeighedLine(
                component,
                line,
                exact,
                weighed,
                weighed.flatMap(quantity -> grams(line, quantity, ingredient)),
                rounded.filter(each -> each.quantity().amount().most().isPresent())
                        .map(KitchenRounding.Rounded::relativeError));
    }

    private KitchenRounding.Rounded rounded(IngredientLine line, Quantity exact, Optional<Ingredient> ingredient) {
        if (factor.equals(Rationals.ONE)) {
            return new KitchenRounding.Rounded(exact, Rationals.ZERO);
        }
        KitchenRounding rounding = rules.rounding();
        boolean eggs =
                exact.unit() == Unit.EACH && ingredient.filter(Eggs::areEggs).isPresent();
        KitchenRounding.Rounded rounded = eggs ? rounding.roundWhole(exact) : rounding.round(exact);
        if (eggs) {
            warnings.eggs(line, exact, rounded, ingredient.orElseThrow());
        } else {
            warnings.rounded(line, exact, rounded);
        }
        ingredient.ifPresent(known -> warnings.beyondScaling(line, known));
        boolean jugful =
                exact.unit() != rounded.quantity().unit() && rounded.quantity().unit() == Unit.MILLILITRE;
        return jugful ? weighedOut(line, exact, ingredient).map(rounding::round).orElse(rounded) : rounded;
    }

    /** Spoons that have become too many to count: what does not pour goes on the scale and not into a jug. */
    private Optional<Quantity> weighedOut(IngredientLine line, Quantity exact, Optional<Ingredient> ingredient) {
        return ingredient
                .filter(known -> !known.kind().equals("liquid") && !known.kind().equals("syrup"))
                .flatMap(known -> line.alternative()
                        .filter(beside -> beside.dimension() == Dimension.MASS)
                        .map(beside -> beside.times(factor))
                        .or(() -> Weighing.inGrams(exact, known, rules.household())));
    }

    /** A weight that the line itself gives beside a measure, "3 cups (360 g)", is better than the pantry's. */
    private Optional<RationalNumber> grams(IngredientLine line, Quantity weighed, Optional<Ingredient> ingredient) {
        if (weighed.dimension() == Dimension.MASS) {
            return weighed.mostInBase(rules.household());
        }
        return line.alternative()
                .filter(beside -> beside.dimension() == Dimension.MASS)
                .flatMap(beside -> beside.times(factor).mostInBase(rules.household()))
                .or(() -> ingredient.flatMap(known -> Weighing.grams(weighed, known, rules.household())));
    }
}
