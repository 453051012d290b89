package org.misecue.scale;

import java.util.List;
import org.misecue.notice.Note;
import org.misecue.recipe.Recipe;
import tech.units.indriya.function.RationalNumber;

/**
 * A recipe for one batch size.
 *
 * @param recipe as written
 * @param factor more than zero; 1 for the written batch
 * @param lines in recipe order, one for each ingredient line
 * @param warnings what had to be rounded hard, or does not scale
 */
public record ScaledRecipe(Recipe recipe, RationalNumber factor, List<WeighedLine> lines, List<Note> warnings) {}
