package org.misecue.recipe;

import java.util.List;
import java.util.Optional;
import org.misecue.notice.Note;
import org.misecue.notice.Place;

/** Lines of the list that were kept but not understood: amounts that are none, missing units, no name. */
final class LineCheck implements RecipeCheck {

    @Override
    public List<Note> notes(Recipe recipe, Larder larder) {
        return recipe.lines().stream()
                .flatMap(line ->
                        sentence(line, larder)
                                .map(text -> new Note(Place.of(recipe.source(), line.line()), text))
                                .stream())
                .toList();
    }

    private Optional<String> sentence(IngredientLine line, Larder larder) {
        Optional<String> broken = BrokenAmounts.sentence(line);
        if (broken.isPresent()) {
            return broken;
        }
        if (BareCount.isDoubtful(line, larder)) {
            return Optional.of(
                    "\"%s\" counts pieces of what is weighed or measured; is a unit missing? Write it as 225 g or 1½ tsp."
                            .formatted(line.text()));
        }
        if (line.text().length() > IngredientLineParser.LONGEST) {
            return Optional.of(
                    "this line of %d characters is too long for an ingredient and is kept as it stands; put one ingredient on each line."
                            .formatted(line.text().length()));
        }
        return line.ingredient().isEmpty()
                ? Optional.of("\"%s\" names no ingredient; write amount and name on one line.".formatted(line.text()))
                : Optional.empty();
    }
}
