package org.misecue.scale;

import java.util.Optional;
import org.misecue.quantity.Household;
import org.misecue.quantity.KitchenRounding;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;

/**
 * What the kitchen weighs, mixes and bakes with.
 *
 * @param resolution what its scale shows: a mass above zero, such as 1 g, 5 g or 0.1 g
 * @param household whose spoons and cups the recipe means
 * @param ovens how many bake at once, 1 or more
 * @param mixer what its mixer's bowl holds to the brim, a volume above zero; empty where that is not known
 */
public record ScaleRules(Quantity resolution, Household household, int ovens, Optional<Quantity> mixer) {

    /** A scale that shows grams, metric spoons, one oven and a mixer of unknown size. */
    public static ScaleRules standard() {
        return new ScaleRules(Quantity.of(1, Unit.GRAM), Household.METRIC, 1, Optional.empty());
    }

    /** The same with other spoons and cups. */
    public ScaleRules with(Household other) {
        return new ScaleRules(resolution, other, ovens, mixer);
    }

    KitchenRounding rounding() {
        return new KitchenRounding(resolution, household);
    }
}
