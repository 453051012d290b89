package org.misecue.recipe;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** What is listed and named by no step. A recipe without a method uses nothing, and says so once elsewhere. */
final class UnusedCheck implements RecipeCheck {

    /** A line of the list by its place; two lines may read alike. */
    private record At(int component, int line) {}

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        Set<At> used = new HashSet<>();
        recipe.steps().forEach(step -> step.uses().forEach(use -> used.add(new At(use.component(), use.line()))));
        List<Note> notes = new java.util.ArrayList<>();
        for (int part = 0; part < recipe.components().size() && !recipe.steps().isEmpty(); part++) {
            List<IngredientLine> lines = recipe.components().get(part).lines();
            for (int at = 0; at < lines.size(); at++) {
                if (!used.contains(new At(part, at))) {
                    IngredientLine line = lines.get(at);
                    notes.add(new Note(
                            Place.of(recipe.source(), line.line()),
                            "\"%s\" is listed but the method never uses it.".formatted(line.text())));
                }
            }
        }
        return List.copyOf(notes);
    }
}
