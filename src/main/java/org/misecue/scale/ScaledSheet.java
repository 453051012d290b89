package org.misecue.scale;

import java.util.Optional;
import org.misecue.quantity.Household;

/**
 * A batch as it is to be shown.
 *
 * @param first the batch in the measures that come first
 * @param beside the same batch in the measures that stand beside them; empty for none
 * @param sets how often it is weighed out
 * @param rules of the kitchen that weighs it
 * @param settings how the oven's and the tin's figures are written too; empty for as they stand in the recipe
 */
public record ScaledSheet(
        Column first, Optional<Column> beside, Sets sets, ScaleRules rules, Optional<Measuring> settings) {

    /** @param household whose cups and spoons these lines are measured by */
    public record Column(ScaledRecipe scaled, Household household) {}

    public ScaledRecipe scaled() {
        return first.scaled();
    }
}
