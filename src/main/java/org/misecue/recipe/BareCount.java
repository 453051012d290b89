package org.misecue.recipe;

import java.util.Optional;
import org.misecue.pantry.Ingredient;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Rationals;
import org.misecue.quantity.Unit;
import tech.units.indriya.function.RationalNumber;

/**
 * Doubts a number without a unit where no pieces can be meant: "250 butter", "2 flour", "200 q sugar". Butter and flour
 * are weighed or measured; eggs and lemons are counted.
 */
final class BareCount {

    /** More pieces than this stand in no list of a kitchen (common practice, no source). */
    private static final RationalNumber MANY = Rationals.of(60);

    private BareCount() {}

    static boolean isDoubtful(IngredientLine line, Larder larder) {
        return line.packing().isEmpty()
                && line.quantity()
                        .filter(quantity -> quantity.unit() == Unit.EACH)
                        .filter(quantity -> isTooMany(quantity) || isNeverCounted(line.ingredient(), larder))
                        .isPresent();
    }

    private static boolean isTooMany(Quantity quantity) {
        return quantity.amount().most().filter(most -> most.compareTo(MANY) > 0).isPresent();
    }

    /** Things in the singular which the pantry measures by cup or spoon, and of which it knows no single piece. */
    private static boolean isNeverCounted(String name, Larder larder) {
        String last = Nouns.last(name);
        if (FruitPart.isPart(last)) {
            return false; // "juice of 1 orange" counts oranges
        }
        Optional<Ingredient> known = larder.heardAs(name);
        return Nouns.singular(last).equals(last)
                && known.filter(ingredient -> !ingredient.aisle().equals("fruit and vegetables"))
                        .filter(ingredient -> !weighs(ingredient, Unit.EACH) && weighs(ingredient, Unit.CUP))
                        .isPresent();
    }

    private static boolean weighs(Ingredient ingredient, Unit measure) {
        return ingredient.weights().stream().anyMatch(weight -> weight.unit() == measure);
    }
}
