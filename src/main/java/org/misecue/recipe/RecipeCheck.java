package org.misecue.recipe;

import java.util.List;
import org.misecue.notice.Note;

/** One thing that can be wrong in a recipe that was understood. A check that is not sure says nothing. */
interface RecipeCheck {

    /** Every check; the notes about one line of the file stand in this order. */
    List<RecipeCheck> ALL = List.of(
            new LineCheck(),
            new UnusedCheck(),
            new MeasuresCheck(),
            new RaisingCheck(),
            new OvenCheck(),
            new TinCheck(),
            new PartsCheck(),
            new MissingCheck(),
            new MethodCheck(),
            new YieldCheck());

    /** What is wrong, each with its line; names and weights are those of the pantry. */
    List<Note> notes(Recipe recipe, Larder larder);
}
