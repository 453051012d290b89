package org.misecue.scale;

import org.misecue.quantity.Household;
import org.misecue.quantity.KitchenRounding;
import org.misecue.quantity.Quantity;
import org.misecue.quantity.Unit;

/**
 * How the kitchen weighs.
 *
 * @param resolution what its scale shows: a mass above zero, such as 1 g, 5 g or 0.1 g
 * @param household whose spoons and cups the recipe means
 */
public record ScaleRules(Quantity resolution, Household household) {

    /** A scale that shows grams, and metric spoons. */
    public static ScaleRules standard() {
        return new ScaleRules(Quantity.of(1, Unit.GRAM), Household.METRIC);
    }

    KitchenRounding rounding() {
        return new KitchenRounding(resolution, household);
    }
}
