package org.misecue.compare;

import java.util.List;
import org.misecue.recipe.IngredientLine;

/** The verdict on one ingredient line that states a quantity. */
public record LineVerdict(
        String component,
        IngredientLine line,
        Verdict verdict,
        Confidence confidence,
        String reason,
        List<Evidence> evidence) {}
