package org.misecue.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Ingredient;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.Household;
import org.misecue.quantity.KitchenRounding;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import org.misecue.recipe.IngredientLine;
import org.misecue.recipe.Recipe;
import org.misecue.recipe.Setting;
import tech.units.indriya.function.RationalNumber;

/** Collects what a person must know about a scaled recipe. The thresholds are common practice, without a source. */
final class ScaleWarnings {

    private static final RationalNumber HARD = Rationals.of(1, 10);
    private static final RationalNumber FAR = Rationals.of(3);
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
    private final List<Note> lines = new ArrayList<>();

    ScaleWarnings(Recipe recipe, RationalNumber factor) {
        this.recipe = recipe;
        this.factor = factor;
    }

    List<Note> forLines() {
        return lines;
    }

    /** Eggs that do not come out whole: what to weigh instead, and the batch that would suit whole eggs. */
    void eggs(IngredientLine line, Quantity exact, KitchenRounding.Rounded rounded, Ingredient eggs) {
        if (rounded.relativeError().signum() == 0) {
            return;
        }
        StringBuilder sentence = new StringBuilder("%s for %s of %s, which is %s."
                .formatted(
                        QuantityWriter.text(rounded.quantity()), decimals(exact), line.ingredient(), percent(rounded)));
        Weighing.grams(exact, eggs, Household.METRIC)
                .ifPresent(grams -> sentence.append(" To keep the proportions, weigh out %s g%s instead, at %s g each."
                        .formatted(
                                Rationals.rounded(grams, 0).toPlainString(),
                                eggs.name().equals("egg") ? " of beaten egg" : "",
                                Rationals.rounded(
                                                Weighing.grams(Quantity.of(1, Unit.EACH), eggs, Household.METRIC)
                                                        .orElseThrow(),
                                                0)
                                        .toPlainString())));
        wholeBatch(line, rounded)
                .ifPresent(batch -> sentence.append(" The batch for %s whole ones is × %s."
                        .formatted(QuantityWriter.text(rounded.quantity()), batch)));
        add(line, sentence.toString());
    }

    private static Optional<String> wholeBatch(IngredientLine line, KitchenRounding.Rounded rounded) {
        return line.quantity()
                .flatMap(written -> written.amount().most())
                .filter(written -> written.signum() > 0)
                .flatMap(written -> rounded.quantity().amount().most().map(whole -> whole.divide(written)))
                .map(batch -> Rationals.rounded(batch, 4).toPlainString());
    }

    /** An amount that had to be rounded by more than a tenth. */
    void rounded(IngredientLine line, Quantity exact, KitchenRounding.Rounded rounded) {
        if (rounded.relativeError().abs().compareTo(HARD) > 0 && exact.unit() != Unit.PINCH) {
            add(
                    line,
                    "%s of %s is rounded from %s, which is %s."
                            .formatted(
                                    QuantityWriter.text(rounded.quantity()),
                                    line.ingredient(),
                                    decimals(exact),
                                    percent(rounded)));
        }
    }

    /** Raising agents and spices do not follow a recipe far. */
    void beyondScaling(IngredientLine line, Ingredient ingredient) {
        if (factor.compareTo(FAR) <= 0) {
            return;
        }
        if (RAISING.contains(ingredient.name())) {
            add(
                    line,
                    "beyond × 3 %s may raise too much or too little when scaled straight; test-bake the batch."
                            .formatted(ingredient.name()));
        } else if (ingredient.aisle().equals("herbs and spices")) {
            add(
                    line,
                    "beyond × 3 %s may come out too strong when scaled straight; start with less and taste."
                            .formatted(ingredient.name()));
        }
    }

    /** What the factor leaves alone. */
    List<Note> forTheWhole(boolean inTin) {
        List<Note> notes = new ArrayList<>();
        if (factor.equals(Rationals.ONE)) {
            return notes;
        }
        notes.add(new Note(
                placeOf(Setting.Kind.OVEN_TEMPERATURE)
                        .or(() -> placeOf(Setting.Kind.DURATION))
                        .orElse(wholeRecipe()),
                "baking time and temperature are not scaled; watch the bake, not the clock."));
        if (!inTin) {
            placeOf(Setting.Kind.PAN)
                    .ifPresent(place -> notes.add(new Note(
                            place,
                            "tins are not scaled: this batch needs × %s the tin's area, or more tins."
                                    .formatted(Rationals.rounded(factor, 2).toPlainString()))));
        }
        return notes;
    }

    private Optional<Place> placeOf(Setting.Kind kind) {
        return recipe.allSettings().stream()
                .filter(setting -> setting.kind() == kind)
                .findFirst()
                .map(setting -> Place.of(recipe.source(), setting.line()));
    }

    private Place wholeRecipe() {
        return Place.of(recipe.source());
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
        return Rationals.rounded(percent.abs(), 1).toPlainString() + " % " + (percent.signum() > 0 ? "more" : "less");
    }
}
