package org.misecue.recipe;

import java.util.List;
import org.misecue.notice.Note;

/** One thing that can be wrong in a recipe that was understood. A check that is not sure says nothing. */
interface RecipeCheck {

    /** In the order in which a recipe's notes stand. */
    List<RecipeCheck> ALL =
            List.of(new MeasuresCheck(), new RaisingCheck(), new OvenCheck(), new PartsCheck(), new MissingCheck());

    /** What is wrong, each with its line. */
    List<Note> notes(Recipe recipe);
}
