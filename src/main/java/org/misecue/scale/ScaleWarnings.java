package org.misecue.scale;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.KitchenRounding;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import tech.units.indriya.function.RationalNumber;

/** Collects what a person must know about the lines of a scaled recipe: what had to be bent, and what does not scale. */
final class ScaleWarnings {

    private static final RationalNumber SLIGHT = Rationals.of(1, 50);
    private static final RationalNumber HARD = Rationals.of(1, 10);
    private static final RationalNumber FAR = Rationals.of(3);
    private static final RationalNumber TEN = Rationals.of(10);
    private static final RationalNumber HUNDRED = Rationals.of(100);

    private static final Set<String> RAISING = Set.of(
            "baking powder",
            "bicarbonate of soda",
            "cream of tartar",
            "dried yeast",
            "fresh yeast",
            "self-raising flour");

    private final Recipe recipe;
    private final RationalNumber factor;
    private final ScaleRules rules;
    private final List<Note> lines = new ArrayList<>();
    private final Map<String, IngredientLine> raising = new LinkedHashMap<>();
    private final Map<String, IngredientLine> spices = new LinkedHashMap<>();

    ScaleWarnings(Recipe recipe, RationalNumber factor, ScaleRules rules) {
        this.recipe = recipe;
        this.factor = factor;
        this.rules = rules;
    }

    /** Line by line; then once for all raising agents and once for all spices, at the first of them. */
    List<Note> forLines() {
        far(
                raising,
                "beyond × 3 these may raise too much or too little when scaled straight: %s. Test-bake the batch (common"
                        + " practice, no source).");
        far(
                spices,
                "beyond × 3 these may come out too strong when scaled straight: %s. Start with less and taste (common"
                        + " practice, no source).");
        return List.copyOf(lines);
    }

    /** Eggs that come out off whole ones by more than a fiftieth: what to weigh instead, and the batch that would suit whole eggs. */
    void eggs(IngredientLine line, Quantity exact, KitchenRounding.Rounded rounded, Ingredient eggs) {
        if (rounded.relativeError().abs().compareTo(SLIGHT) <= 0) {
            return;
        }
        String weigh = Weighing.weighed(Quantity.of(1, Unit.EACH), eggs, rules.household())
                .map(one -> "weigh out %s g of %s (%s g each: %s), or "
                        .formatted(whole(grams(exact, eggs)), beaten(eggs), whole(grams(one.grams())), one.source()))
                .orElse("");
        add(
                line,
                "%s To keep the proportions, %smake %s, which takes %s."
                        .formatted(
                                change(line, exact, rounded),
                                weigh,
                                wholeBatch(line, rounded),
                                QuantityWriter.text(rounded.quantity())));
    }

    private static String beaten(Ingredient eggs) {
        return eggs.name().equals("egg") ? "beaten egg" : eggs.name();
    }

    private RationalNumber grams(Quantity exact, Ingredient eggs) {
        return Weighing.grams(exact, eggs, rules.household()).orElse(Rationals.ZERO);
    }

    private static RationalNumber grams(Quantity grams) {
        return grams.amount().most().orElse(Rationals.ZERO);
    }

    private static String wholeBatch(IngredientLine line, KitchenRounding.Rounded rounded) {
        RationalNumber written =
                line.quantity().flatMap(quantity -> quantity.amount().most()).orElse(Rationals.ONE);
        RationalNumber whole = rounded.quantity().amount().most().orElse(written);
        RationalNumber times = whole.divide(written);
        return times.equals(Rationals.ONE)
                ? "the recipe as written"
                : "the recipe × " + Rationals.rounded(times, 4).toPlainString();
    }

    /** An amount that had to be rounded by more than a tenth. */
    void rounded(IngredientLine line, Quantity exact, KitchenRounding.Rounded rounded) {
        if (rounded.relativeError().abs().compareTo(HARD) > 0 && exact.unit() != Unit.PINCH) {
            add(line, change(line, exact, rounded));
        }
    }

    private static String change(IngredientLine line, Quantity exact, KitchenRounding.Rounded rounded) {
        return "%s: %s rounded to %s, which is %s."
                .formatted(
                        line.ingredient(), decimals(exact), QuantityWriter.text(rounded.quantity()), percent(rounded));
    }

    /** Raising agents and spices do not follow a recipe far. */
    void beyondScaling(IngredientLine line, Ingredient ingredient) {
        if (factor.compareTo(FAR) <= 0) {
            return;
        }
        if (RAISING.contains(ingredient.name())) {
            raising.putIfAbsent(ingredient.name(), line);
        } else if (ingredient.aisle().equals("herbs and spices")) {
            spices.putIfAbsent(ingredient.name(), line);
        }
    }

    private void far(Map<String, IngredientLine> names, String sentence) {
        names.values().stream()
                .findFirst()
                .ifPresent(first -> add(first, sentence.formatted(String.join(", ", names.keySet()))));
    }

    private void add(IngredientLine line, String sentence) {
        lines.add(new Note(Place.of(recipe.source(), line.line()), sentence));
    }

    /** The exact amount to two places, even where the writer would show a vulgar fraction. */
    private static String decimals(Quantity exact) {
        String from = Rationals.rounded(exact.amount().least().orElseThrow(), 2).toPlainString();
        String to = Rationals.rounded(exact.amount().most().orElseThrow(), 2).toPlainString();
        String unit = exact.unit() == Unit.EACH ? "" : " " + exact.unit().code().replace('-', ' ');
        return (from.equals(to) ? from : from + "–" + to) + unit;
    }

    private static String percent(KitchenRounding.Rounded rounded) {
        RationalNumber percent = rounded.relativeError().multiply(HUNDRED);
        int places = percent.abs().compareTo(TEN) < 0 ? 1 : 0;
        return Rationals.rounded(percent.abs(), places).toPlainString() + "% "
                + (percent.signum() > 0 ? "more" : "less");
    }

    private static String whole(RationalNumber grams) {
        return Rationals.rounded(grams, 0).toPlainString();
    }
}
