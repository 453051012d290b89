package org.misecue.recipe;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.notice.Place;
import org.misecue.pantry.Weighing;
import org.misecue.quantity.Household;
import org.misecue.quantity.QuantityWriter;
import org.misecue.quantity.Rationals;
import tech.units.indriya.function.RationalNumber;

/**
 * Raising agents far above their usual share of the flour of their part of the dish. The bounds are wide: common
 * practice is 3 to 6 % of baking powder, ½ to 1 % of bicarbonate, 1 to 2 % of dried and 2 to 4 % of fresh yeast, no
 * source. Too little is not noted: whisked eggs, sourdough and cold proving do with hardly any.
 */
final class RaisingCheck implements RecipeCheck {

    private static final Map<String, RationalNumber> MOST = Map.of(
            "baking powder", Rationals.of(10, 100),
            "bicarbonate of soda", Rationals.of(3, 100),
            "dried yeast", Rationals.of(5, 100),
            "fresh yeast", Rationals.of(10, 100));

    private static final Cued FLOUR = Cued.inAnyCase(
            "\\b(?:flours?|maida|atta|besan|semolina|sooji|rava|polenta|cornmeal|oats|oatmeal|cornflour|cornstarch"
                    + "|starch|almonds|hazelnuts|walnuts|pistachios|coconut|breadcrumbs|bran)\\b");

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        List<Note> notes = new ArrayList<>();
        for (Component component : recipe.components()) {
            RationalNumber flour = component.lines().stream()
                    .filter(line -> isFlour(line.ingredient(), larder))
                    .flatMap(line -> grams(line, larder).stream())
                    .reduce(Rationals.ZERO, RationalNumber::add);
            if (flour.signum() > 0) {
                component.lines().forEach(line -> sentence(line, flour, larder)
                        .ifPresent(text -> notes.add(new Note(Place.of(recipe.source(), line.line()), text))));
            }
        }
        return List.copyOf(notes);
    }

    private static Optional<String> sentence(IngredientLine line, RationalNumber flour, Larder larder) {
        Optional<RationalNumber> most =
                larder.find(line.ingredient()).flatMap(known -> Optional.ofNullable(MOST.get(known.name())));
        return most.flatMap(bound -> grams(line, larder)
                .map(grams -> grams.divide(flour))
                .filter(share -> share.compareTo(bound) > 0)
                .map(share -> "%s of %s is %s %% of the flour, far more than usual; is it the right spoon?"
                        .formatted(
                                line.quantity().map(QuantityWriter::text).orElse(""),
                                line.ingredient(),
                                Rationals.rounded(share.multiply(Rationals.of(100)), 1)
                                        .toPlainString())));
    }

    private static Optional<RationalNumber> grams(IngredientLine line, Larder larder) {
        return line.quantity().flatMap(quantity -> larder.find(line.ingredient())
                .flatMap(known -> Weighing.grams(quantity, known, Household.METRIC)));
    }

    /** Whatever is milled and baked: oats, ground nuts and starches carry a batter as flour does. */
    static boolean isFlour(String ingredient, Larder larder) {
        return FLOUR.standsIn(larder.wording(ingredient));
    }
}
