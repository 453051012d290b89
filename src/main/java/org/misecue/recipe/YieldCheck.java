package org.misecue.recipe;

import java.util.List;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** A recipe that does not say how much it makes: it can be scaled by factor only. */
final class YieldCheck implements RecipeCheck {

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        boolean says = recipe.allSettings().stream().anyMatch(setting -> setting.kind() == Setting.Kind.YIELD);
        return says
                ? List.of()
                : List.of(new Note(
                        Place.of(recipe.source()),
                        "no yield was found; say what it makes, such as \"Makes 12 buns\" or \"Serves 8\"."));
    }
}
