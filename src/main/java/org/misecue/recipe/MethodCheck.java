package org.misecue.recipe;

import java.util.List;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** A recipe without a method: bowls, shots and the comparison have nothing to go by. */
final class MethodCheck implements RecipeCheck {

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        return recipe.steps().isEmpty()
                ? List.of(new Note(
                        Place.of(recipe.source()), "no method was found; put its steps under a heading \"Method\"."))
                : List.of();
    }
}
